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
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.Role;
import loopwright.loop.Machine;
import loopwright.loop.SoundPower;
import loopwright.loop.air.AirDirection;

/** A layout with a mod set, real parts, air directions and fan speeds, and what it comes to. */
public final class Build {

    private final Layout layout;
    private final Done done;
    private final Core core;
    private final AtWork work;
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

    /**
     * Its parts at work.
     *
     * @param fittings mount by mount
     * @param machine what the physics is asked about
     */
    record AtWork(List<Fitting> fittings, Machine machine, int dutyPercent) {}

    Build(Layout layout, Done done, Core core, AtWork work, Outcome outcome) {
        this.layout = layout;
        this.done = done;
        this.core = core;
        this.work = work;
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
        return work.dutyPercent();
    }

    /** Heat into the coolant, W. */
    public double heatW() {
        return core.heat().coolantW();
    }

    /** The room that its parts besides radiators and fans take. */
    public PartSet room() {
        return core.room();
    }

    /** Real parts, mount by mount. */
    List<Fitting> fittings() {
        return work.fittings();
    }

    /** What it is made of, for putting together one that differs. */
    Workbench.Recipe recipe() {
        List<Workbench.Placed> placed = new ArrayList<>();
        for (Fitting fitting : work.fittings()) {
            String mount = fitting.stack().frame().mount().id();
            AirDirection direction =
                    mountsThatBlow(AirDirection.OUT).contains(mount) ? AirDirection.OUT : AirDirection.IN;
            placed.add(new Workbench.Placed(fitting, direction));
        }
        return new Workbench.Recipe(placed, work.dutyPercent(), core, done.mods());
    }

    /** All stacks, bare rows of fans too, in the order of their mounts. */
    public List<Stack> stacks() {
        List<Stack> out = new ArrayList<>();
        work.fittings().forEach(f -> out.add(f.stack()));
        out.sort((a, b) -> Integer.compare(a.frame().index(), b.frame().index()));
        return List.copyOf(out);
    }

    /** What the physics is asked about it. */
    public Machine machine() {
        return work.machine();
    }

    /** The parts that fill roles. */
    public Chosen chosen() {
        return core.chosen();
    }

    /** Ids of its parts by role: single roles, then {@code radiator MOUNT}, {@code fans MOUNT}. */
    public Map<String, List<String>> parts() {
        Map<String, List<String>> out = new TreeMap<>();
        core.chosen().parts().forEach((role, part) -> out.put(name(role), List.of(part.id())));
        for (Fitting fitting : work.fittings()) {
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

    /** Mounts whose fans blow some way, in the chassis's order. */
    public List<String> mountsThatBlow(AirDirection direction) {
        return work.machine().mounts().stream()
                .filter(m -> m.direction() == direction)
                .map(Machine.FanMount::mount)
                .toList();
    }

    /** Everything by value but the duty. */
    String butForDuty() {
        return layout.text() + "\n" + done.ids() + "\n" + mountsThatBlow(AirDirection.OUT) + "\n"
                + parts().entrySet().stream().map(Object::toString).collect(Collectors.joining(";"));
    }

    /** A short printable key: the same for the same build in every catalogue. */
    public String key() {
        return Layout.key(butForDuty() + " " + dutyPercent());
    }
}
