/** Calculators on energy and its supply: a day's energy, batteries, solar panels, and what the fuse panel still has to spare. */
package loomwright.supply;
