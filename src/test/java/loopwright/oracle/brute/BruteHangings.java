package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.ScrewThread;
import loopwright.oracle.OracleCase;
import loopwright.quantity.Dimension;
import loopwright.testing.SmallParts;

/** What can hang on a mount with a mod set, real part by real part; parts of one shape are put together. */
final class BruteHangings {
    private static final Dimension NOTHING = Dimension.ofHmm(0);

    private final OracleCase question;
    private final List<Mod> mods;
    private final int[] insideHmm;
    private final BruteRange range;

    BruteHangings(OracleCase question, List<Mod> mods, int[] insideHmm) {
        this.question = question;
        this.mods = mods;
        this.insideHmm = insideHmm;
        this.range =
                new BruteRange(question.catalog(), question.brief().limits().freeAreaMin(), Fault.NONE);
    }

    List<BruteHung> stacks(Mount mount) {
        List<BruteShape> all = new ArrayList<>();
        LoopWish wish = question.brief().loop();
        for (Radiator radiator : BruteShape.candidates(question.catalog().all(Radiator.class), wish.radiators())) {
            for (Fan fan : fans(radiator.pattern())) {
                for (BruteShape.Way way : BruteShape.Way.OF_RADIATORS) {
                    all.add(new BruteShape(radiator, fan, way, false));
                    all.add(new BruteShape(radiator, fan, way, true));
                }
            }
        }
        return hung(mount, all, true);
    }

    List<BruteHung> rows(Mount mount) {
        List<BruteShape> all = new ArrayList<>();
        TreeSet<Pattern> patterns = new TreeSet<>();
        mount.seats().forEach(s -> patterns.add(s.pattern()));
        mods.forEach(m -> m.effect().seats().forEach(s -> patterns.add(s.seat().pattern())));
        for (Pattern pattern : patterns) {
            for (Fan fan : fans(pattern)) {
                all.add(new BruteShape(noRadiator(pattern), fan, BruteShape.Way.FANS_ONLY, false));
            }
        }
        return hung(mount, all, false);
    }

    private List<Fan> fans(Pattern pattern) {
        return BruteShape.candidates(
                        question.catalog().all(Fan.class),
                        question.brief().loop().fans())
                .stream()
                .filter(f -> f.frame().sizeMm() == pattern.sizeMm())
                .toList();
    }

    private List<BruteHung> hung(Mount mount, List<BruteShape> shapes, boolean radiators) {
        Map<String, List<BruteShape>> alike = new LinkedHashMap<>();
        Map<String, List<BruteHung.Real>> real = new LinkedHashMap<>();
        for (BruteShape shape : shapes) {
            if (!body(mount, shape).unknown()) {
                alike.computeIfAbsent(shape.text(), t -> new ArrayList<>()).add(shape);
                real.computeIfAbsent(shape.text(), t -> new ArrayList<>())
                        .add(new BruteHung.Real(
                                radiators ? Optional.of(shape.radiator()) : Optional.empty(), shape.fan()));
            }
        }
        List<BruteHung> out = new ArrayList<>();
        alike.forEach((text, same) -> {
            BruteShape shape = BruteShape.asOne(same);
            List<int[]> positions = range.positions(mount, shape, mods, false);
            if (!positions.isEmpty()) {
                int axisU = Xyz.of(mount.lengthwise());
                int axisV = Xyz.of(BruteStack.sideways(face(mount), mount));
                BruteBody body = body(mount, shape);
                out.add(new BruteHung(
                        mount,
                        new BruteRun.Hanging(mount.id(), text, body, axisU, axisV, positions),
                        shape,
                        real.getOrDefault(text, List.of())));
            }
        });
        return out;
    }

    private BruteBody body(Mount mount, BruteShape shape) {
        return new BruteStack(question.catalog().practice().room(), face(mount), mount, shape, insideHmm, 0).body();
    }

    private Face face(Mount mount) {
        return question.chassis().shell().panels().stream()
                .filter(p -> p.id().equals(mount.panel()))
                .findFirst()
                .orElseThrow()
                .face();
    }

    private static Radiator noRadiator(Pattern pattern) {
        return new Radiator(
                "none",
                "none",
                Optional.empty(),
                new Purchase(0, 0),
                pattern,
                new Radiator.Body(
                        NOTHING, NOTHING, NOTHING, NOTHING, new Radiator.Seat(ScrewThread.M3, NOTHING, NOTHING), 0),
                new Radiator.Ports(List.of(), Radiator.Metal.COPPER),
                SmallParts.core(1, 1, 1, 1));
    }
}
