package loopwright.fit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.Wanted;
import loopwright.fit.rules.Role;

/**
 * A case in which some wishes are kept, for searches over builds: the wished parts alone in their roles, the wished mods done or kept
 * out, and of the layouts those that have the wished radiators and else only the brief's own.
 *
 * @param layouts which layouts have what is wished
 */
public record Narrowed(FitCase fitCase, FitWish wish, Predicate<Layout> layouts) {

    /** The case with some of its wishes kept, by their texts. */
    public static Narrowed of(WishedCase wished, Set<String> kept) {
        List<Wish> wishes =
                wished.wishes().stream().filter(w -> kept.contains(w.text())).toList();
        Brief wide = wished.widened().brief();
        Brief own = wished.asked().brief();
        Brief brief = new Brief(
                wide.id(),
                wide.title(),
                wide.client(),
                wide.chassis(),
                parts(own.parts(), wishes),
                new loopwright.catalog.brief.LoopWish(
                        wide.loop().radiators(),
                        own.loop().fans(),
                        only(wishes, Role.PUMP).or(own.loop()::pumps),
                        only(wishes, Role.RESERVOIR).or(own.loop()::reservoirs),
                        own.loop().tube(),
                        own.loop().tubeM(),
                        own.loop().coolant(),
                        own.loop().coolantL(),
                        own.loop().run(),
                        own.loop().fittings(),
                        own.loop().addedBiocides()),
                wide.limits(),
                wide.terms(),
                wide.look(),
                wide.calendar());
        FitCase fitCase = new FitCase(wished.asked().catalog(), wished.asked().chassis(), brief);
        return new Narrowed(fitCase, mods(wishes), l -> has(l, wished, wishes));
    }

    private static Wanted parts(Wanted own, List<Wish> wishes) {
        return new Wanted(
                only(wishes, Role.BOARD).orElse(own.board()),
                only(wishes, Role.PROCESSOR).orElse(own.processor()),
                only(wishes, Role.CARD).orElse(own.card()),
                only(wishes, Role.MEMORY).orElse(own.memory()),
                own.drives(),
                only(wishes, Role.BLOCK).orElse(own.processorBlock()),
                only(wishes, Role.SUPPLY).or(own::supply));
    }

    private static Optional<Choice> only(List<Wish> wishes, Role role) {
        Set<String> ids = new TreeSet<>();
        for (Wish wish : wishes) {
            if (wish instanceof Wish.PartIs part && part.role() == role) {
                ids.add(part.id());
            }
        }
        return ids.isEmpty() ? Optional.empty() : Optional.of(new Choice(List.copyOf(ids), Optional.empty()));
    }

    private static FitWish mods(List<Wish> wishes) {
        List<String> with = wishes.stream()
                .filter(Wish.ModDone.class::isInstance)
                .map(w -> ((Wish.ModDone) w).mod())
                .toList();
        List<String> without = wishes.stream()
                .filter(Wish.ModNotDone.class::isInstance)
                .map(w -> ((Wish.ModNotDone) w).mod())
                .toList();
        return new FitWish(with, without, OptionalInt.empty(), OptionalLong.empty());
    }

    private static boolean has(Layout layout, WishedCase wished, List<Wish> wishes) {
        Set<Integer> wishedMounts = new TreeSet<>();
        for (Wish wish : wishes) {
            boolean met = true;
            if (wish instanceof Wish.RadiatorAt at) {
                met = false;
                for (Layout.Stack stack : layout.stacks()) {
                    if (at.mounts().contains(stack.frame().mount().id()) && wished.meets(stack.shape(), at)) {
                        wishedMounts.add(stack.frame().index());
                        met = true;
                    }
                }
            } else if (wish instanceof Wish.NothingAt nothing) {
                met = layout.stacks().stream()
                        .noneMatch(s -> s.frame().mount().id().equals(nothing.mount()));
            }
            if (!met) {
                return false;
            }
        }
        return layout.stacks().stream()
                .allMatch(s -> wishedMounts.contains(s.frame().index())
                        || wished.asked().shapes().all().contains(s.shape()));
    }
}
