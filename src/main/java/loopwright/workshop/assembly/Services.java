package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import loopwright.workshop.assembly.Assembly.Service;

/** What comes out first, for each part and each layer that has screws of its own. */
final class Services {

    private final PuttingIn machine;
    private final LeastOut least;

    Services(PuttingIn machine) {
        this.machine = machine;
        this.least = new LeastOut(machine);
    }

    List<Service> all() {
        List<Service> out = new ArrayList<>();
        for (int i = 0; i < machine.pieces().size(); i++) {
            Piece piece = machine.pieces().get(i);
            if (piece.traits().kind() == Piece.Kind.PART || piece.traits().kind() == Piece.Kind.LID) {
                out.add(whole(i));
                for (Piece.Body body : piece.bodies()) {
                    if (body.own().isPresent()) {
                        out.add(layer(i, body));
                    }
                }
            }
        }
        return out;
    }

    private Service whole(int i) {
        Piece piece = machine.pieces().get(i);
        List<Integer> joined = joined(i);
        Found found = least.before(i)
                .map(o -> found(o, machine.needs(i)))
                .orElse(Found.NONE)
                .undoing(joined, piece.traits().wet());
        List<String> together = piece.bodies().stream()
                .filter(b -> b.own().isEmpty())
                .map(Piece.Body::title)
                .toList();
        return service(piece.id(), piece.title(), together.size() > 1 ? together : List.of(), found);
    }

    /** Runs that are joined to a piece before it goes on: they are still on it when it is off. */
    private List<Integer> joined(int piece) {
        String id = machine.pieces().get(piece).id();
        return machine.members(machine.all()).stream()
                .filter(k -> machine.pieces().get(k).isRun())
                .filter(k -> machine.pieces().get(k).carries().contains(id))
                .toList();
    }

    /** In its place, or with its whole stack out: where the loop stays closed, then the fewest. */
    private Service layer(int i, Piece.Body body) {
        Piece piece = machine.pieces().get(i);
        List<Need> needs = machine.needs(i, body);
        Optional<Found> inPlace = needs.stream().anyMatch(n -> n.ways().none())
                ? Optional.empty()
                : least.before(needs, 1L << i).map(o -> found(o, needs));
        Optional<Found> with = least.before(i)
                .map(o -> found(o, machine.needs(i)).after(i, piece.traits().wet(), joined(i)));
        Found best = Stream.of(inPlace, with)
                .flatMap(Optional::stream)
                .min(Comparator.comparing(Found::wet).thenComparing(f -> f.out().size()))
                .orElse(Found.NONE);
        return service(piece.id() + ":" + body.title(), body.title(), List.of(), best);
    }

    /** What comes out, what swings aside, whether coolant is in any of it. */
    private record Found(List<Integer> out, long aside, boolean wet, boolean possible) {
        static final Found NONE = new Found(List.of(), 0, false, false);

        Found undoing(List<Integer> runs, boolean more) {
            List<Integer> all = new ArrayList<>(out);
            runs.stream().filter(r -> !out.contains(r)).forEach(all::add);
            return new Found(all, aside, wet || more || !runs.isEmpty(), possible);
        }

        Found after(int last, boolean lastIsWet, List<Integer> runs) {
            List<Integer> all = new ArrayList<>(out);
            all.add(last);
            long swing = runs.stream().mapToLong(r -> 1L << r).reduce(aside, (a, b) -> a | b);
            return new Found(all, swing, wet || lastIsWet, possible);
        }
    }

    private Found found(List<Integer> out, List<Need> last) {
        long in = machine.all();
        long aside = 0;
        long set = 0;
        for (int i : out) {
            aside |= aside(machine.needs(i), in);
            for (int run : joined(i)) {
                aside |= 1L << run;
            }
            in &= ~(1L << i);
            set |= 1L << i;
        }
        aside |= aside(last, in);
        return new Found(out, aside & ~set, least.isWet(set), true);
    }

    private long aside(List<Need> needs, long in) {
        return needs.stream()
                .mapToLong(n -> n.withSoft().aside(in, machine.soft()))
                .reduce(0L, (a, b) -> a | b);
    }

    private Service service(String id, String title, List<String> together, Found found) {
        List<Piece> out = found.out().stream().map(machine.pieces()::get).toList();
        List<String> aside = machine.members(found.aside()).stream()
                .map(k -> machine.pieces().get(k).title())
                .toList();
        return new Service(
                id,
                title,
                titles(out, p -> !p.isRun() && !isPlug(p)),
                titles(out, Services::isPlug),
                together,
                new Assembly.Tubes(titles(out, Piece::isRun), aside),
                found.possible(),
                found.wet());
    }

    private static boolean isPlug(Piece piece) {
        return piece.traits().kind() == Piece.Kind.PLUG;
    }

    private static List<String> titles(List<Piece> pieces, Predicate<Piece> which) {
        return pieces.stream().filter(which).map(Piece::title).toList();
    }
}
