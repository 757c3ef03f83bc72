package loopwright.oracle.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.part.Radiator;
import loopwright.loop.Machine;
import loopwright.loop.air.AirDirection;
import loopwright.oracle.OracleCase;
import loopwright.oracle.brute.BruteFits;
import loopwright.oracle.brute.BruteHung;

/** Every build of given stacks with a mod set: which way each blows, radiators and fans, the other parts, and duties. */
final class BruteBuilds {
    private final OracleCase question;
    private final BruteFits fits;
    private final BruteAir air;
    private final BruteThermal thermal;
    private final BruteKept kept;
    private final RankFault fault;
    private final Terms terms;
    private final BruteLimits limits;
    private final BruteBill bill;
    private final long fittingsCents;
    private final List<Integer> duties;
    private final Map<Ask, List<BruteBlower>> blowers = new HashMap<>();

    BruteBuilds(OracleCase question, BruteFits fits, BruteThermal thermal, BruteKept kept, RankFault fault) {
        this.question = question;
        this.fits = fits;
        this.air = new BruteAir(question, fault);
        this.thermal = thermal;
        this.kept = kept;
        this.fault = fault;
        this.terms = question.brief().terms();
        this.limits = new BruteLimits(question.brief().limits());
        this.bill = BruteBill.of(fits.mods(), question.catalog(), terms);
        this.fittingsCents =
                BruteFittings.of(question, BruteCore.tube(question), fault).radiatorCents();
        this.duties = IntStream.iterate(100, d -> d > 0, d -> d - terms.dutyStepPercent())
                .boxed()
                .toList();
    }

    private record Ask(BruteHung hung, AirDirection direction) {}

    private record Task(String layout, List<BruteHung> hung, int openings, List<BruteCore> cores) {}

    /** What is picked so far comes to; sounds and mounts duty by duty. */
    private record Sofar(long cents, int leadDays, List<BruteBlower> picked) {
        Sofar and(BruteBlower one) {
            List<BruteBlower> more = new ArrayList<>(picked);
            more.add(one);
            return new Sofar(cents + one.cents(), Math.max(leadDays, one.leadDays()), more);
        }
    }

    void all(String layout, List<BruteHung> hung, List<BruteCore> cores) {
        if (cores.isEmpty()) {
            return;
        }
        List<BruteHung> inOrder = new ArrayList<>(hung);
        inOrder.sort(Comparator.comparingInt(h -> question.chassis().mounts().indexOf(h.mount())));
        Set<String> carrying = hung.stream().map(h -> h.mount().id()).collect(Collectors.toSet());
        int openings = thermal.openings(air.openings(fits, carrying));
        Task task = new Task(layout, inOrder, openings, cores);
        for (int bits = 0; bits < 1 << inOrder.size(); bits++) {
            if (fault != RankFault.ONE_BLOWS_OUT || Integer.bitCount(bits) == 1) {
                pick(task, bits, new Sofar(bill.cents(), bill.coverLeadDays(), List.of()));
            }
        }
    }

    private void pick(Task task, int bits, Sofar sofar) {
        int at = sofar.picked().size();
        if (at == task.hung().size()) {
            cores(task, sofar);
            return;
        }
        BruteHung hung = task.hung().get(at);
        AirDirection way = (bits >> at & 1) == 0 ? AirDirection.IN : AirDirection.OUT;
        if (fault == RankFault.ROWS_BLOW_OUT_ONLY && isRow(hung) && way == AirDirection.IN) {
            return;
        }
        for (BruteBlower one : blowers.computeIfAbsent(new Ask(hung, way), this::blowers)) {
            pick(task, bits, sofar.and(one));
        }
    }

    private static boolean isRow(BruteHung hung) {
        return hung.real().stream().allMatch(r -> r.radiator().isEmpty());
    }

    private List<BruteBlower> blowers(Ask ask) {
        BruteHung hung = ask.hung();
        List<BruteHung.Real> real = hung.real();
        if (fault == RankFault.CHEAPEST_PARTS_ONLY) {
            real = real.stream().min(Comparator.comparingLong(BruteBuilds::cents)).stream()
                    .toList();
        }
        Machine.MountAir meets = air.meets(fits, fits.mods(), hung.mount(), hung.pattern(), hung.fanThicknessHmm());
        List<BruteBlower> out = new ArrayList<>();
        for (BruteHung.Real one : real) {
            BruteBlower.Hung at = new BruteBlower.Hung(
                    hung, one.fan(), meets, one.radiator().map(r -> air.hung(hung.mount(), r)), ask.direction());
            out.add(BruteBlower.of(at, duties, thermal, fittingsCents, fault));
        }
        return out;
    }

    private static long cents(BruteHung.Real real) {
        return real.fan().buy().priceCents()
                + real.radiator().map(r -> r.buy().priceCents()).orElse(0L);
    }

    private void cores(Task task, Sofar sofar) {
        List<Integer> airs = new ArrayList<>();
        List<Long> sounds = new ArrayList<>();
        for (int i = 0; i < duties.size(); i++) {
            List<Integer> mounts = new ArrayList<>();
            long sound = 0;
            for (BruteBlower blower : sofar.picked()) {
                mounts.add(blower.mounts().get(i));
                sound += blower.soundMillionths().get(i);
            }
            airs.add(thermal.air(mounts, task.openings()));
            sounds.add(sound);
        }
        for (BruteCore core : task.cores()) {
            if (!isOneMetal(core, sofar.picked())) {
                continue;
            }
            int loop = thermal.loop(core.loop());
            List<BruteFigures> feasible = new ArrayList<>();
            for (int i = 0; i < airs.size(); i++) {
                kept.noteBuild();
                BruteFigures cold = cold(core, sofar, sounds.get(i));
                if (limits.keeps(cold)) { // nothing is solved that is too dear, loud or late anyway
                    thermal.centiK(airs.get(i), loop).ifPresent(k -> addIfKept(cold.at(k), feasible));
                }
                if (fault == RankFault.FULL_DUTY_DECIDES && feasible.isEmpty()) {
                    break;
                }
            }
            kept.keep(task.layout(), feasible);
        }
    }

    private boolean isOneMetal(BruteCore core, List<BruteBlower> picked) {
        Set<Radiator.Metal> metals = EnumSet.copyOf(core.metals());
        picked.forEach(b -> b.metal().ifPresent(metals::add));
        return metals.size() == 1 || fault == RankFault.METALS_IGNORED;
    }

    private void addIfKept(BruteFigures figures, List<BruteFigures> feasible) {
        if (limits.keeps(figures)) {
            feasible.add(figures);
        }
    }

    /** What it comes to with coolant as cold as the room. */
    private BruteFigures cold(BruteCore core, Sofar sofar, long fansMillionths) {
        return new BruteFigures(
                BruteBill.priceCents(core.cents() + sofar.cents(), terms),
                0,
                core.soundMillionths() + fansMillionths,
                bill.labourMin(),
                bill.days(Math.max(core.leadDays(), sofar.leadDays()), terms));
    }
}
