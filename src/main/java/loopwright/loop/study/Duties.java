package loopwright.loop.study;

import java.util.ArrayList;
import java.util.List;

/**
 * A duty for each mount and one for the pump.
 *
 * @param percents whole percent of full speed, mounts in their order, the pump last
 */
public record Duties(List<Integer> percents) implements Comparable<Duties> {

    /** Copies. */
    public Duties {
        percents = List.copyOf(percents);
    }

    /** Of a mount. */
    public int mountPercent(int mount) {
        return percents.get(mount);
    }

    /** Of the pump. */
    public int pumpPercent() {
        return percents.get(pump());
    }

    /** The pump's number. */
    int pump() {
        return percents.size() - 1;
    }

    int at(int motor) {
        return percents.get(motor);
    }

    Duties with(int motor, int percent) {
        List<Integer> out = new ArrayList<>(percents);
        out.set(motor, percent);
        return new Duties(out);
    }

    /** By the first motor that differs. */
    @Override
    public int compareTo(Duties other) {
        for (int i = 0; i < percents.size(); i++) {
            int order = Integer.compare(at(i), other.at(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }
}
