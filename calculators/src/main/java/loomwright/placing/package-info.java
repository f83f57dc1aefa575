/** Placing: where cut-outs fit between the edges of a panel and what stands behind it. */
package loomwright.placing;
