/** Protection: what a conductor may carry, and the fuse-link or breaker that guards it. */
package loomwright.protection;
