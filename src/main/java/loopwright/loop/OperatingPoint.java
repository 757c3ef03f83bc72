package loopwright.loop;

/**
 * Where a radiator with its fans comes to rest.
 *
 * @param airflowM3PerH through the whole radiator, m³/h
 * @param pressurePa the fans' pressure, of both layers where there are two, Pa
 * @param conductanceWPerK of the whole radiator, coolant mean to incoming air, W/K
 */
public record OperatingPoint(double airflowM3PerH, double pressurePa, double conductanceWPerK) {}
