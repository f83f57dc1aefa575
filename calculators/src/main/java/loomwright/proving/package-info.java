/** Proving: what the meter should read, and what a reading that differs hides. */
package loomwright.proving;
