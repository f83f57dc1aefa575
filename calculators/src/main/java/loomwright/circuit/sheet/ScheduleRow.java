package loomwright.circuit.sheet;

import java.util.List;
import loomwright.quantity.Quantity;

/**
 * One circuit of the schedule: what one device protects, up to the next device.
 *
 * @param partId the device
 * @param designation its short designation
 * @param title what it is called
 * @param device kind and rating of the device
 * @param conductors the conductors behind it, each as {@code W3, 6 mm², 4.2 m}
 * @param loads the loads behind it, each by its title
 * @param designCurrent the largest current through it
 * @param ampacity the least ampacity of its conductors; null if none is listed
 * @param highestFault the highest prospective fault current at the device; null if not known
 * @param lowestFault the lowest prospective fault current at the ends of what it protects
 * @param worstDrop the largest drop to one of its loads; null if it has none, or no operating point
 */
public record ScheduleRow(
        String partId, String designation, String title, String device, List<String> conductors, List<String> loads, Quantity designCurrent,
        Quantity ampacity, Quantity highestFault, Quantity lowestFault, Quantity worstDrop) {}
