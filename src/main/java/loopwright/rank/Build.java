package loopwright.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loopwright.catalog.part.Part;
import loopwright.fit.FitCase;
import loopwright.fit.Layout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.PartSet;
import loopwright.fit.rules.Role;
import loopwright.loop.CoolingCase;
import loopwright.loop.SectionRate;
import loopwright.loop.SoundPower;

/** A layout with a mod set, real parts, air directions and fan speeds, and what it comes to. */
public final class Build {

    private final Layout layout;
    private final Done done;
    private final Core core;
    private final Airing airing;
    private final Outcome outcome;

    /** The mods that are done. */
    record Done(ModSet mods, List<String> ids, ModBill bill, Takes takes) {

        static Done of(FitCase fitCase, ModSet mods) {
            ModBill bill = ModBill.of(fitCase.catalog(), fitCase.chassis(), mods);
            Costing costing = new Costing(fitCase.brief().terms());
            int workingDays =
                    ModBill.workingDays(costing.labourMin(bill), fitCase.brief().terms());
            return new Done(
                    mods,
                    mods.ids(fitCase.chassis()),
                    bill,
                    new Takes(costing.workCents(bill), costing.labourMin(bill), workingDays));
        }

        /** Days until handover with parts that take so long to come. */
        int days(int partsLeadDays) {
            return Math.max(partsLeadDays, bill.leadDays()) + takes.workingDays() + bill.waitDays();
        }
    }

    /** What a whole build with these mods takes besides parts: labour and material, cents; minutes; days of work. */
    record Takes(long workCents, int labourMin, int workingDays) {}

    /**
     * Real parts on the mounts.
     *
     * @param fittings mount by mount; a bare row of fans comes last
     * @param exhaust index of the fitting whose fans blow out; the others draw in
     * @param dutyPercent of every fan
     */
    record Airing(List<Fitting> fittings, int exhaust, int dutyPercent) {
        Airing {
            fittings = List.copyOf(fittings);
        }

        /** The same parts on the stacks of a layout that takes the same parts. */
        Airing on(Layout other) {
            List<Fitting> moved = new ArrayList<>(fittings);
            for (int i = 0; i < other.stacks().size(); i++) {
                moved.set(i, fittings.get(i).on(other.stacks().get(i)));
            }
            return new Airing(moved, exhaust, dutyPercent);
        }
    }

    /**
     * What it comes to.
     *
     * @param priceCents the price
     * @param coolantOverRoomCentiK coolant over room, hundredths of a kelvin, rounded half up
     * @param labourMin hands-on minutes
     * @param days until handover
     */
    public record Outcome(long priceCents, int coolantOverRoomCentiK, SoundPower sound, int labourMin, int days) {

        /** Whether this is at least as good in price and temperature, and better in one. */
        boolean beats(Outcome other) {
            return priceCents <= other.priceCents
                    && coolantOverRoomCentiK <= other.coolantOverRoomCentiK
                    && !ties(other);
        }

        /** Whether price and temperature are the same. */
        boolean ties(Outcome other) {
            return priceCents == other.priceCents && coolantOverRoomCentiK == other.coolantOverRoomCentiK;
        }
    }

    Build(Layout layout, Done done, Core core, Airing airing, Outcome outcome) {
        this.layout = layout;
        this.done = done;
        this.core = core;
        this.airing = airing;
        this.outcome = outcome;
    }

    /** Its layout: the radiators. */
    public Layout layout() {
        return layout;
    }

    /** Its mods. */
    public ModSet mods() {
        return done.mods();
    }

    /** Ids of its mods, sorted. */
    public List<String> modIds() {
        return done.ids();
    }

    /** What its mods take and show. */
    public ModBill bill() {
        return done.bill();
    }

    /** What it comes to. */
    public Outcome outcome() {
        return outcome;
    }

    /** Duty of every fan, percent. */
    public int dutyPercent() {
        return airing.dutyPercent();
    }

    /** Heat into the coolant, W. */
    public double heatW() {
        return core.heatW();
    }

    /** The room that its parts besides radiators and fans take. */
    public PartSet room() {
        return core.room();
    }

    /** All stacks, bare rows of fans too, in the order of their mounts. */
    public List<Stack> stacks() {
        List<Stack> out = new ArrayList<>();
        airing.fittings().forEach(f -> out.add(f.stack()));
        out.sort((a, b) -> Integer.compare(a.frame().index(), b.frame().index()));
        return List.copyOf(out);
    }

    /** What the cooling model is asked about it. */
    public CoolingCase cooling(double caseAirRiseK) {
        List<SectionRate> out = new ArrayList<>();
        for (int i = 0; i < airing.fittings().size(); i++) {
            Fitting fitting = airing.fittings().get(i);
            if (fitting.radiator().isPresent()) {
                out.add(new SectionRate(fitting.conductanceWPerK(), i == airing.exhaust() ? caseAirRiseK : 0));
            }
        }
        return new CoolingCase(core.heatW(), out);
    }

    /** Ids of its parts by role: single roles, then {@code radiator MOUNT}, {@code fans MOUNT}. */
    public Map<String, List<String>> parts() {
        Map<String, List<String>> out = new TreeMap<>();
        core.chosen().parts().forEach((role, part) -> out.put(name(role), List.of(part.id())));
        for (Fitting fitting : airing.fittings()) {
            String mount = fitting.stack().frame().mount().id();
            Optional<String> radiator = fitting.radiator().map(Part::id);
            radiator.ifPresent(id -> out.put("radiator " + mount, List.of(id)));
            out.put(
                    "fans " + mount,
                    java.util.Collections.nCopies(fitting.fans(), fitting.fan().id()));
        }
        return out;
    }

    private static String name(Role role) {
        return role == Role.BLOCK ? "processor block" : role.name().toLowerCase(java.util.Locale.ROOT);
    }

    /** Mounts whose fans blow out. */
    public String exhaustMount() {
        return airing.fittings().get(airing.exhaust()).stack().frame().mount().id();
    }

    /** A short printable key: the same for the same build in every catalogue. */
    public String key() {
        return Layout.key(layout.text() + "\n" + done.ids() + "\n" + exhaustMount() + " " + dutyPercent() + "\n"
                + parts().entrySet().stream().map(Object::toString).collect(Collectors.joining(";")));
    }
}
