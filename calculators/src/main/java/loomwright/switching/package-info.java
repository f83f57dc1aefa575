/** Switching: what a relay coil or a solid-state switch costs, how warm it gets, and whether its trigger reaches it. */
package loomwright.switching;
