/** What a reader did on one device, as one file for another: its format, what is refused, and how it joins what is there. */
package loomwright.along;
