package loopwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Radiator;
import loopwright.fit.rules.Role;

/**
 * A case and what is wished in it: which shapes meet which wish, and which parts may fill a role.
 *
 * <p>Besides the brief's own radiators and fans the case has those that wishes name, and the catalogue's fans.
 */
public final class WishedCase {

    private final FitCase asked;
    private final FitCase widened;
    private final List<Wish> wishes;
    private final boolean wished;
    private final Set<String> fanFrames = new TreeSet<>();
    private final Map<Wish.RadiatorAt, Set<Shape>> meeting = new HashMap<>();

    /**
     * A case with wishes.
     *
     * @param wishes of different texts; without any, a radiator on some mount is wished
     */
    public WishedCase(FitCase asked, List<Wish> wishes) {
        this.asked = asked;
        this.wishes = wishes.isEmpty() ? List.of(somewhere(asked)) : distinct(wishes);
        this.wished = !wishes.isEmpty();
        this.widened = new FitCase(asked.catalog(), asked.chassis(), widenedBrief());
        asked.shapes().fans().values().forEach(group -> group.forEach(f -> fanFrames.add(frame(f))));
    }

    private static Wish somewhere(FitCase asked) {
        return new Wish.RadiatorAt(
                "radiator", asked.frames().stream().map(f -> f.mount().id()).toList(), Wish.Pick.ANY);
    }

    private static List<Wish> distinct(List<Wish> wishes) {
        Map<String, Wish> out = new LinkedHashMap<>();
        wishes.forEach(w -> out.putIfAbsent(w.text(), w));
        return List.copyOf(out.values());
    }

    /** The case as the brief asks for it. */
    public FitCase asked() {
        return asked;
    }

    /** Whether something was wished, or only that there be a radiator. */
    public boolean isAsked() {
        return wished;
    }

    /** The case with the parts that wishes name. */
    public FitCase widened() {
        return widened;
    }

    /** The wishes. */
    public List<Wish> wishes() {
        return wishes;
    }

    /** The wishes of a kind. */
    <W extends Wish> List<W> wishes(Class<W> kind) {
        return wishes.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private Brief widenedBrief() {
        Brief brief = asked.brief();
        LoopWish loop = brief.loop();
        Set<String> radiators = new TreeSet<>(own(Radiator.class, loop.radiators()));
        for (Wish.RadiatorAt wish : wishes(Wish.RadiatorAt.class)) {
            radiators.addAll(wished(wish.pick(), loop));
        }
        List<String> fans = ids(asked.catalog().all(Fan.class));
        LoopWish wider = new LoopWish(
                Optional.of(new Choice(List.copyOf(radiators), Optional.empty())),
                Optional.of(new Choice(fans, Optional.empty())),
                loop.pumps(),
                loop.reservoirs(),
                loop.tube(),
                loop.tubeM(),
                loop.coolant(),
                loop.coolantL(),
                loop.run(),
                loop.fittings(),
                loop.addedBiocides());
        return new Brief(
                brief.id(),
                brief.title(),
                brief.client(),
                brief.chassis(),
                brief.parts(),
                wider,
                brief.limits(),
                brief.terms(),
                brief.look(),
                brief.calendar());
    }

    private <P extends Part> List<String> own(Class<P> kind, Optional<Choice> choice) {
        List<String> all = ids(asked.catalog().all(kind));
        return choice.map(Choice::anyOf).filter(ids -> !ids.isEmpty()).orElse(all);
    }

    private static List<String> ids(List<? extends Part> parts) {
        return parts.stream().map(Part::id).toList();
    }

    /** Radiators that meet a wish: the brief's, or the catalogue's if the brief has none. */
    private List<String> wished(Wish.Pick pick, LoopWish loop) {
        List<String> own = own(Radiator.class, loop.radiators());
        Predicate<Radiator> meets = r -> meets(r, pick);
        List<Radiator> all =
                asked.catalog().all(Radiator.class).stream().filter(meets).toList();
        List<Radiator> ofBrief = all.stream().filter(r -> own.contains(r.id())).toList();
        return ids(ofBrief.isEmpty() ? all : ofBrief);
    }

    private static boolean meets(Radiator radiator, Wish.Pick pick) {
        return pick.pattern().filter(p -> !p.equals(radiator.pattern())).isEmpty()
                && pick.thicknessHmm()
                        .filter(t -> t != radiator.body().thicknessMm().valueHmm())
                        .isEmpty()
                && pick.id().filter(i -> !i.equals(radiator.id())).isEmpty();
    }

    /** Whether a shape has a radiator that meets a wish. */
    public boolean meets(Shape shape, Wish.RadiatorAt wish) {
        return meeting.computeIfAbsent(wish, this::meeting).contains(shape);
    }

    private Set<Shape> meeting(Wish.RadiatorAt wish) {
        List<String> will = wished(wish.pick(), asked.brief().loop());
        Set<Shape> out = new HashSet<>();
        for (Shape shape : widened.shapes().all()) {
            if (widened.shapes().radiatorsOf(shape).stream().anyMatch(r -> will.contains(r.id()))) {
                out.add(shape);
            }
        }
        return out;
    }

    /** Whether the brief's fans have the shape's thickness. */
    boolean hasOwnFans(Shape shape) {
        return widened.shapes().fansOf(shape).stream().anyMatch(f -> fanFrames.contains(frame(f)));
    }

    private static String frame(Fan fan) {
        return fan.frame().sizeMm() + "/" + fan.frame().thicknessMm().valueHmm();
    }

    /** Parts of the brief's choice for a role, and those that wishes name; in order of id. */
    List<Part> ownParts(Role role) {
        List<Part> out = new ArrayList<>(asked.candidates(role));
        wishes(Wish.PartIs.class).stream()
                .filter(w -> w.role() == role)
                .map(w -> (Part) asked.catalog().part(role.kind(), w.id()))
                .filter(p -> !out.contains(p))
                .forEach(out::add);
        out.sort(Comparator.comparing(Part::id));
        return List.copyOf(out);
    }

    /** The catalogue's other parts for a role. */
    List<Part> otherParts(Role role) {
        List<Part> own = ownParts(role);
        return asked.catalog().all(role.kind()).stream()
                .map(p -> (Part) p)
                .filter(p -> !own.contains(p))
                .toList();
    }

    /** The mounts that wishes name, in the chassis's order. */
    List<MountFrame> frames() {
        Set<String> named = new LinkedHashSet<>();
        wishes(Wish.RadiatorAt.class).forEach(w -> named.addAll(w.mounts()));
        wishes(Wish.NothingAt.class).forEach(w -> named.add(w.mount()));
        return widened.frames().stream()
                .filter(f -> named.contains(f.mount().id()))
                .toList();
    }

    /** The mods that can matter to the wishes. */
    ModSet mods() {
        long bits = 0;
        for (int i = 0; i < asked.chassis().mods().size(); i++) {
            String id = asked.chassis().mods().get(i).id();
            boolean named = wishes.stream()
                    .anyMatch(w -> (w instanceof Wish.ModDone d && d.mod().equals(id))
                            || (w instanceof Wish.ModNotDone n && n.mod().equals(id)));
            bits |= named || matters(i) ? 1L << i : 0;
        }
        return ModRules.withRequired(asked.chassis(), bits);
    }

    private boolean matters(int mod) {
        Stream<String> mounts = frames().stream().map(f -> f.mount().id());
        Mod.Effect effect = asked.chassis().mods().get(mod).effect();
        // What only adds bodies or closes places can never help.
        return !effect.removes().isEmpty()
                || !effect.opensPlaces().isEmpty()
                || mounts.anyMatch(m -> ModRules.aboutMount(asked.chassis(), m).has(mod));
    }
}
