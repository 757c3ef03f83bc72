package loopwright.loop;

import java.util.Set;
import java.util.TreeSet;

/**
 * How sure each input is: relative standard uncertainties, and the inputs' names.
 *
 * <p>Correlations are common to all radiators; a radiator's own share is what its make does not have in common with others.
 * Values without a source are assumed, see {@code physics/assumptions.md}.
 */
final class Scatter {

    /** Heat transfer of a core that no measurement calibrates; [ChangWang1997]: ±15 % for 89 % of the points. */
    static final double FINS = 0.15;

    /** The same of a core that measured points calibrate. ASSUMED. */
    static final double FINS_MEASURED = 0.05;

    /** What a radiator does not share with others. ASSUMED. */
    static final double RADIATOR_OWN = 0.05;

    /** Pressure loss of a core; [Chang2000]: ±15 % for 83 % of the points. */
    static final double CORE_LOSS = 0.15;

    /** Pressure of a fan against its sheet. ASSUMED. */
    static final double FAN = 0.10;

    /** Loss of plates, slots and gaps; ±16 % between two compilations. */
    static final double PATH = 0.16;

    /** What a mount's own opening is off by, in loss. ASSUMED. */
    static final double OPENING = 0.10;

    /** A part's heat at full load. ASSUMED. */
    static final double HEAT = 0.05;

    /** Heat that stays in the case's air. ASSUMED. */
    static final double CASE_HEAT = 0.20;

    /** Losses on the water side; two methods for fittings differ by 20 to 25 %. */
    static final double WATER_LOSS = 0.25;

    /** A pump's head against its sheet. ASSUMED. */
    static final double PUMP = 0.05;

    /** Resistance of a block against its sheet. ASSUMED. */
    static final double BLOCK = 0.10;

    static final String FINS_NAME = "heat transfer of louvred fins";
    static final String CORE_LOSS_NAME = "pressure loss of louvred fins";
    static final String PATH_NAME = "loss of plates, slots and gaps";
    static final String CASE_HEAT_NAME = "heat in the case's air";
    static final String WATER_LOSS_NAME = "pressure losses of the coolant";

    private Scatter() {}

    static String radiator(String id) {
        return "radiator " + id;
    }

    static String fan(String id) {
        return "fan " + id;
    }

    static String opening(String mount) {
        return "opening at " + mount;
    }

    static String heat(String part) {
        return "heat of " + part;
    }

    /** A block, told by the part it is on and its rated resistance. */
    static String block(Machine.BlockAt block) {
        return "block of " + block.flow().resistanceKPerW() + " K/W on " + block.part();
    }

    static String pump(String id) {
        return "pump " + id;
    }

    /** Names of everything uncertain about a machine, sorted. */
    static Set<String> inputs(Machine machine) {
        Set<String> out = new TreeSet<>(Set.of(FINS_NAME, CORE_LOSS_NAME, PATH_NAME, CASE_HEAT_NAME, WATER_LOSS_NAME));
        for (Machine.FanMount mount : machine.mounts()) {
            out.add(fan(mount.fans().fan().id()));
            out.add(opening(mount.mount()));
            mount.radiator().ifPresent(r -> out.add(radiator(r.radiator().id())));
        }
        machine.openings().forEach(v -> out.add(opening(v.name())));
        for (Machine.BlockAt block : machine.water().blocks()) {
            out.add(heat(block.part()));
            out.add(block(block));
        }
        out.add(pump(machine.water().pump().pump().id()));
        return out;
    }
}
