package loopwright.plumbing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loopwright.catalog.brief.LoopWish.BlockOrder;
import loopwright.catalog.part.Tube;
import loopwright.catalog.part.TubeFitting;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.fit.FitCase;
import loopwright.fit.Witness;
import loopwright.fit.rules.Chosen;
import loopwright.loop.Machine;
import loopwright.plumbing.LoopPart.Kind;
import loopwright.plumbing.order.OrderQuestion;
import loopwright.plumbing.order.OrderSearch;
import loopwright.plumbing.route.End;
import loopwright.plumbing.route.Route;
import loopwright.plumbing.route.Router;
import loopwright.plumbing.route.Space;
import loopwright.plumbing.route.TubeShape;
import loopwright.plumbing.rule.LoopRules;
import loopwright.quantity.Hundredths;

/** Plans the loop of a placed build. */
public final class Planner {

    /** Spacing of the lattice on which all pairs of ports are compared, hundredths of a millimetre. */
    private static final int PAIRS_HMM = 1000;

    /** What a pair without a way counts besides its length: more than any way round. Hundredths of a millimetre. */
    private static final int NO_WAY_HMM = 1_000_000;

    /** Height over the port and radius of a straight fitting where the catalogue has none for the tube; common practice. */
    private static final int FITTING_HEIGHT_HMM = 2500;

    private final FitCase fitCase;
    private final PlumbingPractice practice;

    /** A planner of builds of a case. */
    public Planner(FitCase fitCase) {
        this.fitCase = fitCase;
        this.practice = fitCase.catalog().practice().plumbing().orElse(PlumbingPractice.USUAL);
    }

    /**
     * Plans a build.
     *
     * @param witness where everything stands
     * @param chosen the build's own parts
     * @param machine the build as the physics has it: its radiators by mount, its tube
     */
    public LoopPlan plan(Witness witness, Chosen chosen, Machine machine) {
        PlacedParts placed = new PlacedParts(fitCase, witness, chosen);
        List<LoopPart> parts = placed.all(machine);
        Tube tube = machine.water().runs().tube();
        FittingChoice fittings =
                FittingChoice.of(fitCase.catalog(), fitCase.brief().loop(), tube);
        TubeShape shape = shape(tube, fittings);
        Space space =
                CaseSpace.of(fitCase, placed, Hundredths.ofMm(practice.tube().fromFanMm()));
        OrderQuestion.Round round = order(parts, space, shape);
        List<LoopPart> inOrder = round.sequence().stream().map(parts::get).toList();
        List<Port> ports = parts.stream().flatMap(p -> p.ports().stream()).toList();
        List<RunLayer.Wanted> wanted = new ArrayList<>();
        for (int i = 0; i < inOrder.size(); i++) {
            int here = round.sequence().get(i);
            int next = round.sequence().get((i + 1) % inOrder.size());
            wanted.add(new RunLayer.Wanted(
                    ports.get(round.ports().get(here).out()),
                    ports.get(round.ports().get(next).in())));
        }
        List<PlannedRun> runs = new RunLayer(
                        space, shape, wanted, Hundredths.ofMm(practice.tube().lengthStepMm()))
                .lay();
        List<Port> free = ports.stream()
                .filter(p -> wanted.stream().noneMatch(w -> w.from().equals(p) || w.to().equals(p)))
                .toList();
        LoopPlan.Openings openings = new LoopPlan.Openings(
                placed.fill(parts.get(0)), free, free.stream().min((a, b) -> Integer.compare(a.at().z(), b.at().z())));
        LoopPlan.Materials materials = new LoopPlan.Materials(
                tube, shape, FittingBill.of(fittings, runs, free.size()), coolant(parts, tube, runs), space);
        LoopPlan bare = new LoopPlan(inOrder, runs, openings, materials, List.of(), notes(parts, machine, fittings));
        return new LoopPlan(inOrder, runs, openings, materials, LoopRules.of(bare, practice), bare.notes());
    }

    private TubeShape shape(Tube tube, FittingChoice fittings) {
        int radius = (tube.outsideMm().valueHmm() + 1) / 2;
        PlumbingPractice.Runs runs = practice.tube();
        int stub = tube.kind() == Tube.Kind.RIGID ? runs.rigidStubMm() : runs.softStubMm();
        TubeShape.Bends bends = new TubeShape.Bends(
                tube.bendRadiusMinMm().valueHmm(),
                Hundredths.ofMm(stub),
                Hundredths.ofMm(runs.bendAsTubeMm()),
                Hundredths.ofMm(runs.fromFanMm()));
        int straightAsTube = Hundredths.ofMm(runs.straightAsTubeMm());
        int usualRadius = fitCase.catalog().practice().room().fittingRadiusMm().valueHmm();
        TubeShape.Fitting straight = fittings.straight()
                .map(f -> fitting(f, straightAsTube))
                .orElse(new TubeShape.Fitting(FITTING_HEIGHT_HMM, usualRadius, straightAsTube));
        return new TubeShape(
                radius, bends, straight, fittings.elbow().map(f -> fitting(f, Hundredths.ofMm(runs.elbowAsTubeMm()))));
    }

    private static TubeShape.Fitting fitting(TubeFitting part, int asTubeHmm) {
        return new TubeShape.Fitting(part.heightMm().valueHmm(), part.radiusMm().valueHmm(), asTubeHmm);
    }

    /** The order of parts and their ports: number i of the ports is the i-th of all parts' in turn. */
    private static OrderQuestion.Round order(List<LoopPart> parts, Space space, TubeShape shape) {
        List<Port> ports = parts.stream().flatMap(p -> p.ports().stream()).toList();
        List<End> ends = ports.stream().map(RunLayer::end).toList();
        List<List<Optional<Route>>> ways = new Router(space, shape, PAIRS_HMM).all(ends, ends);
        List<List<Integer>> costs = new ArrayList<>();
        for (int i = 0; i < ports.size(); i++) {
            List<Integer> row = new ArrayList<>();
            for (int j = 0; j < ports.size(); j++) {
                int noWay = NO_WAY_HMM + ports.get(i).at().wayTo(ports.get(j).at());
                row.add(ways.get(Math.min(i, j))
                        .get(Math.max(i, j))
                        .map(r -> r.costHmm() + 2 * shape.straight().asTube())
                        .orElse(noWay));
            }
            costs.add(row);
        }
        List<OrderQuestion.Stop> stops = new ArrayList<>();
        int first = 0;
        for (LoopPart part : parts) {
            List<Integer> numbers =
                    IntStream.range(first, first + part.ports().size()).boxed().toList();
            stops.add(new OrderQuestion.Stop(
                    numbers.stream().filter(n -> ports.get(n).mayBeIn()).toList(),
                    numbers.stream().filter(n -> ports.get(n).mayBeOut()).toList()));
            first += part.ports().size();
        }
        boolean apart = parts.get(0).kind() == Kind.RESERVOIR;
        return new OrderSearch(new OrderQuestion(stops, apart ? 0 : -1, apart ? 1 : -1, costs)).best();
    }

    private CoolantOrder coolant(List<LoopPart> parts, Tube tube, List<PlannedRun> runs) {
        long lengthHmm = runs.stream().mapToLong(PlannedRun::lengthHmm).sum();
        return CoolantOrder.of(
                parts.stream().map(p -> p.holds().coolantML()).toList(),
                CoolantOrder.tubeML(tube.boreMm().valueHmm(), lengthHmm),
                practice.coolant());
    }

    private static List<String> notes(List<LoopPart> parts, Machine machine, FittingChoice fittings) {
        List<String> out = new ArrayList<>();
        List<String> assumed = parts.stream()
                .filter(p -> p.ports().stream().anyMatch(Port::assumed))
                .map(LoopPart::name)
                .toList();
        if (!assumed.isEmpty()) {
            out.add("Ports assumed, as no file says where they are: " + String.join(", ", assumed) + ".");
        }
        if (machine.water().order() == BlockOrder.PARALLEL) {
            out.add(
                    "The brief has the blocks side by side; the runs are planned one block after the other: a split and a"
                            + " join, with a tee each, are yours to place.");
        }
        if (fittings.straight().isEmpty()) {
            out.add("No straight fitting of the catalogue that the brief allows takes this tube: its size is assumed.");
        }
        if (fittings.elbow().isEmpty()) {
            out.add("No right-angle elbow of the catalogue that the brief allows: runs are planned without.");
        }
        return out;
    }
}
