package loopwright.oracle.rank;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.part.Fan;
import loopwright.loop.AirPath;
import loopwright.loop.CoolingCase;
import loopwright.loop.CoolingModel;
import loopwright.loop.Duty;
import loopwright.loop.SectionRate;
import loopwright.loop.Sound;
import loopwright.loop.SoundPower;
import loopwright.oracle.OracleCase;
import loopwright.oracle.brute.BruteFits;
import loopwright.oracle.brute.BruteHung;

/** Every build of given stacks with a mod set: radiators and fans, duty, and the other parts. */
final class BruteBuilds {
    private final OracleCase question;
    private final BruteFits fits;
    private final BruteAir air;
    private final CoolingModel model;
    private final BruteKept kept;
    private final RankFault fault;
    private final Terms terms;
    private final BruteLimits limits;
    private final BruteBill bill;
    private final double riseK;

    BruteBuilds(
            OracleCase question, BruteFits fits, BruteAir air, CoolingModel model, BruteKept kept, RankFault fault) {
        this.question = question;
        this.fits = fits;
        this.air = air;
        this.model = model;
        this.kept = kept;
        this.fault = fault;
        this.terms = question.brief().terms();
        this.limits = new BruteLimits(question.brief().limits());
        this.bill = BruteBill.of(fits.mods(), question.catalog(), terms);
        this.riseK = fault == RankFault.EXHAUST_BREATHES_ROOM
                ? 0
                : question.catalog().practice().heat().caseAirRiseK();
    }

    /** What the stacks so far come to. */
    private record Sofar(long cents, long soundMillionths, int leadDays, List<SectionRate> rates) {}

    void all(String layout, List<BruteHung> hung, BruteHung exhaust, List<BruteCore> cores) {
        if (cores.isEmpty()) {
            return;
        }
        List<BruteHung> inOrder = new ArrayList<>(hung);
        inOrder.sort(Comparator.comparingInt(h -> question.chassis().mounts().indexOf(h.mount())));
        List<AirPath> paths = inOrder.stream().map(h -> air.path(fits, h)).toList();
        for (int duty : BruteAir.dutiesPercent(terms.dutyStepPercent())) {
            boolean kept = parts(
                    new Task(layout, inOrder, paths, exhaust, cores, duty),
                    0,
                    new Sofar(bill.cents(), 0, bill.coverLeadDays(), List.of()));
            if (fault == RankFault.FULL_DUTY_DECIDES && !kept) {
                return;
            }
        }
    }

    private record Task(
            String layout,
            List<BruteHung> hung,
            List<AirPath> paths,
            BruteHung exhaust,
            List<BruteCore> cores,
            int dutyPercent) {}

    private boolean parts(Task task, int next, Sofar sofar) {
        if (next == task.hung().size()) {
            return cores(task, sofar);
        }
        boolean any = false;
        BruteHung hung = task.hung().get(next);
        List<BruteHung.Real> real = hung.real();
        if (fault == RankFault.CHEAPEST_PARTS_ONLY) {
            real = real.stream().min(Comparator.comparingLong(BruteBuilds::cents)).stream()
                    .toList();
        }
        for (BruteHung.Real one : real) {
            Fan fan = one.fan();
            int fans = hung.pattern().fans() * hung.fanLayers();
            SoundPower each = SoundPower.ofDBA(Sound.levelDBA(fan, new Duty(task.dutyPercent())));
            long cents = sofar.cents() + fans * fan.buy().priceCents();
            int lead = Math.max(sofar.leadDays(), fan.buy().leadDays());
            List<SectionRate> rates = new ArrayList<>(sofar.rates());
            if (one.radiator().isPresent()) {
                cents += one.radiator().get().buy().priceCents();
                lead = Math.max(lead, one.radiator().get().buy().leadDays());
                rates.add(new SectionRate(
                        air.conductanceWPerK(
                                one.radiator().get(),
                                fan,
                                hung.fanLayers(),
                                task.dutyPercent(),
                                task.paths().get(next)),
                        hung == task.exhaust() ? riseK : 0));
            }
            long sound = sofar.soundMillionths() + fans * each.millionths();
            any |= parts(task, next + 1, new Sofar(cents, sound, lead, rates));
        }
        return any;
    }

    private static long cents(BruteHung.Real real) {
        return real.fan().buy().priceCents()
                + real.radiator().map(r -> r.buy().priceCents()).orElse(0L);
    }

    private boolean cores(Task task, Sofar sofar) {
        boolean any = false;
        Map<Double, OptionalDouble> byHeatK = new HashMap<>();
        for (BruteCore core : task.cores()) {
            kept.noteBuild();
            OptionalDouble overRoomK = byHeatK.computeIfAbsent(
                    core.heatW(), w -> model.coolantOverRoomK(new CoolingCase(w, sofar.rates())));
            if (overRoomK.isPresent()) {
                BruteFigures figures = new BruteFigures(
                        BruteBill.priceCents(core.cents() + sofar.cents(), terms),
                        centi(overRoomK.getAsDouble()),
                        core.soundMillionths() + sofar.soundMillionths(),
                        bill.labourMin(),
                        bill.days(Math.max(core.leadDays(), sofar.leadDays()), terms));
                if (limits.keeps(figures)) {
                    kept.keep(task.layout(), figures);
                    any = true;
                }
            }
        }
        return any;
    }

    private static long centi(double kelvin) {
        return new BigDecimal(kelvin)
                .movePointRight(2)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }
}
