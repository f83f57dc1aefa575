/** Conductors: cross-section, resistance and temperature, gauges, and voltage drop. */
package loomwright.conductor;
