/** A circuit as a page: its drawing, what was found, and the sheets to print. The same code writes it in the page and in the generator. */
package loomwright.circuit.page;
