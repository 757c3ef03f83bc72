package loopwright.loop;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * How far a machine's figures swing with what is uncertain: its state, and its state with each input off by one standard
 * deviation, one at a time.
 *
 * <p><b>Accuracy.</b> First order: the swings of one figure are added in squares, as inputs are independent. In a difference of
 * two machines an input that both have swings both at once, and only what it does to the difference counts.
 *
 * <p><b>Source.</b> Law of propagation of uncertainty, JCGM 100:2008 (GUM) 5.1; standard uncertainties: {@code Scatter}.
 */
public final class Swings {

    private final Steady state;
    private final Map<String, Steady> swung;

    private Swings(Steady state, Map<String, Steady> swung) {
        this.state = state;
        this.swung = swung;
    }

    /**
     * The swings of a machine that finds a steady state.
     *
     * @throws IllegalArgumentException if it does not
     */
    public static Swings of(MachineModel model, Machine machine) {
        Map<String, Steady> swung = new TreeMap<>();
        for (String input : Scatter.inputs(machine)) {
            swung.put(input, steady(model, machine, Nudge.of(input)));
        }
        return new Swings(steady(model, machine, Nudge.NONE), swung);
    }

    /** The swings of a machine; empty where it, or it with an input off, finds no steady state. */
    public static Optional<Swings> find(MachineModel model, Machine machine) {
        Map<String, Steady> swung = new TreeMap<>();
        for (String input : Scatter.inputs(machine)) {
            Optional<Steady> state = model.solve(machine, Nudge.of(input)).found();
            if (state.isEmpty()) {
                return Optional.empty();
            }
            swung.put(input, state.get());
        }
        return model.solve(machine).found().map(state -> new Swings(state, swung));
    }

    private static Steady steady(MachineModel model, Machine machine, Nudge nudge) {
        SteadyState state = model.solve(machine, nudge);
        if (state instanceof SteadyState.None none) {
            throw new IllegalArgumentException("no steady state: " + none.why());
        }
        return (Steady) state;
    }

    /** The state itself. */
    public Steady state() {
        return state;
    }

    /**
     * A figure of a machine that hangs on uncertain inputs besides what they do to its state, like a block's resistance.
     */
    @FunctionalInterface
    public interface Figure {
        /** The figure in a state, with an input off its value. */
        double of(Steady state, Nudge nudge);
    }

    /** What each input does to a figure when it is one standard deviation up, by input. */
    public Map<String, Double> effects(ToDoubleFunction<Steady> figure) {
        return effectsOf((s, n) -> figure.applyAsDouble(s));
    }

    private Map<String, Double> effectsOf(Figure figure) {
        double value = figure.of(state, Nudge.NONE);
        Map<String, Double> out = new TreeMap<>();
        swung.forEach((input, s) -> out.put(input, figure.of(s, Nudge.of(input)) - value));
        return out;
    }

    /** A figure's standard uncertainty. */
    public double plusMinus(ToDoubleFunction<Steady> figure) {
        return plusMinusOf((s, n) -> figure.applyAsDouble(s));
    }

    /** The same of a figure that hangs on uncertain inputs besides. */
    public double plusMinusOf(Figure figure) {
        double sum = 0;
        for (double effect : effectsOf(figure).values()) {
            sum += effect * effect;
        }
        return Math.sqrt(sum);
    }

    /** The band of a temperature. */
    public Band band(ToDoubleFunction<Steady> figure) {
        return Band.around(figure.applyAsDouble(state), plusMinus(figure));
    }

    /** The band of a figure here less the same figure there. */
    public Band less(Swings other, ToDoubleFunction<Steady> figure) {
        return less(other, (s, n) -> figure.applyAsDouble(s), (s, n) -> figure.applyAsDouble(s));
    }

    /**
     * The band of a figure here less one there.
     *
     * @param here of this machine
     * @param there of the other
     */
    public Band less(Swings other, Figure here, Figure there) {
        Map<String, Double> ours = effectsOf(here);
        Map<String, Double> theirs = other.effectsOf(there);
        Set<String> inputs = new TreeSet<>(ours.keySet());
        inputs.addAll(theirs.keySet());
        double sum = 0;
        for (String input : inputs) {
            double effect = ours.getOrDefault(input, 0.0) - theirs.getOrDefault(input, 0.0);
            sum += effect * effect;
        }
        double value = here.of(state, Nudge.NONE) - there.of(other.state, Nudge.NONE);
        return Band.around(value, Math.sqrt(sum));
    }
}
