package loopwright.oracle;

import loopwright.catalog.Catalog;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.chassis.Chassis;

/** One question: a whole small catalogue, one of its chassis and a brief; {@code seed} tells how to get it again. */
public record OracleCase(long seed, Catalog catalog, Chassis chassis, Brief brief) {}
