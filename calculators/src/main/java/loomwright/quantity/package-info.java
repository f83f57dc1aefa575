/** Units, quantities, and the only place where text becomes a number or a number becomes text. */
package loomwright.quantity;
