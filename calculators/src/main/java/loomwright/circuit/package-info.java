/** A whole installation: its parts, how each is fed, and what was typed for it. Edits give a new circuit. */
package loomwright.circuit;
