/** Where a figure comes from: the document, the place in it, and how far it can be trusted. */
package loomwright.source;
