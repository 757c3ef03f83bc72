package loopwright.answer.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.catalog.Catalog;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.read.Nearest;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.fit.Wish;
import loopwright.fit.rules.Role;
import loopwright.quantity.Hundredths;

/**
 * Wishes as they are typed: {@code front=2x140/45}, {@code card=ID}, {@code without=MOD}; why.md has the table.
 *
 * @param ofFit about what fits
 * @param ofBuilds about builds
 */
public record Wishes(List<Wish> ofFit, List<BuildWish> ofBuilds) {

    private static final Pattern CLASS = Pattern.compile("([1-9])x(\\d{2,3})(?:/(\\d{1,3}(?:\\.\\d{1,2})?))?");

    /** Copies. */
    public Wishes {
        ofFit = List.copyOf(ofFit);
        ofBuilds = List.copyOf(ofBuilds);
    }

    /** What a question wished that found nothing: a radiator somewhere, with its mods done or not done. */
    public static Wishes ofNothing(FitCase fitCase, FitWish wish) {
        List<Wish> out = new ArrayList<>();
        if (!wish.with().isEmpty() || !wish.without().isEmpty()) {
            List<String> mounts =
                    fitCase.chassis().mounts().stream().map(Mount::id).toList();
            out.add(new Wish.RadiatorAt("radiator", mounts, Wish.Pick.ANY));
            wish.with().forEach(m -> out.add(new Wish.ModDone("with=" + m, m)));
            wish.without().forEach(m -> out.add(new Wish.ModNotDone("without=" + m, m)));
        }
        return new Wishes(out, List.of());
    }

    /** Wishes as read, and what was wrong with those that could not be. */
    public record Read(Wishes wishes, List<String> problems) {}

    /** Reads wishes in a chassis. */
    public static Read read(List<String> texts, Catalog catalog, Chassis chassis, Optional<java.time.LocalDate> start) {
        List<Wish> fit = new ArrayList<>();
        List<BuildWish> builds = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        Reader reader = new Reader(catalog, chassis);
        for (String text : texts) {
            try {
                Optional<BuildWish> build = BuildWish.read(text, start);
                if (build.isPresent()) {
                    builds.add(build.get());
                } else {
                    fit.add(reader.wish(text));
                }
            } catch (IllegalArgumentException e) {
                problems.add("--want " + text + ": " + e.getMessage());
            }
        }
        return new Read(new Wishes(fit, builds), List.copyOf(problems));
    }

    /** Reads one wish after the other. */
    private record Reader(Catalog catalog, Chassis chassis) {

        Wish wish(String text) {
            int at = text.indexOf('=');
            if (at < 1 || at == text.length() - 1) {
                throw new IllegalArgumentException("write WHAT=VALUE, like front=2x140/45 or card=PART-ID");
            }
            String what = text.substring(0, at);
            String value = text.substring(at + 1);
            if (what.equals("with")) {
                return new Wish.ModDone(text, mod(value));
            }
            if (what.equals("without")) {
                return new Wish.ModNotDone(text, mod(value));
            }
            for (Role role : Role.values()) {
                if (role.word().equals(what)) {
                    return new Wish.PartIs(text, role, part(role, value));
                }
            }
            List<String> mounts = chassis.mounts().stream().map(Mount::id).toList();
            if (mounts.contains(what)) {
                return value.equals("nothing")
                        ? new Wish.NothingAt(text, what)
                        : new Wish.RadiatorAt(text, List.of(what), pick(value));
            }
            List<String> known = new ArrayList<>(mounts);
            for (Role role : Role.values()) {
                known.add(role.word());
            }
            known.addAll(List.of("with", "without"));
            known.addAll(BuildWish.WORDS);
            throw unknown(what, known, k -> "nothing that can be wished is called " + k);
        }

        private Wish.Pick pick(String value) {
            if (value.equals("radiator")) {
                return Wish.Pick.ANY;
            }
            Matcher matcher = CLASS.matcher(value);
            if (matcher.matches()) {
                loopwright.catalog.basis.Pattern pattern = new loopwright.catalog.basis.Pattern(
                        Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
                Optional<Integer> thickness = Optional.ofNullable(matcher.group(3))
                        .map(java.math.BigDecimal::new)
                        .map(Hundredths::ofMm);
                boolean any = catalog.all(Radiator.class).stream()
                        .anyMatch(r -> r.pattern().equals(pattern)
                                && thickness
                                        .filter(t -> t != r.body().thicknessMm().valueHmm())
                                        .isEmpty());
                if (!any) {
                    throw new IllegalArgumentException("the catalogue has no radiator " + value + "; it has "
                            + String.join(", ", classes(pattern)));
                }
                return new Wish.Pick(Optional.of(pattern), thickness, Optional.empty());
            }
            List<String> ids =
                    catalog.all(Radiator.class).stream().map(Part::id).toList();
            if (!ids.contains(value)) {
                throw unknown(
                        value,
                        ids,
                        v -> "write 2x140, 2x140/45, radiator, nothing or a radiator's id; no radiator is called " + v);
            }
            return new Wish.Pick(Optional.empty(), Optional.empty(), Optional.of(value));
        }

        private List<String> classes(loopwright.catalog.basis.Pattern pattern) {
            List<String> same = catalog.all(Radiator.class).stream()
                    .filter(r -> r.pattern().equals(pattern))
                    .map(r -> r.pattern() + "/"
                            + WishWords.mm(r.body().thicknessMm().valueHmm()))
                    .distinct()
                    .sorted()
                    .toList();
            return same.isEmpty()
                    ? catalog.all(Radiator.class).stream()
                            .map(r -> r.pattern().toString())
                            .distinct()
                            .sorted()
                            .toList()
                    : same;
        }

        private String part(Role role, String id) {
            List<String> ids = catalog.all(role.kind()).stream().map(Part::id).toList();
            if (!ids.contains(id)) {
                throw unknown(id, ids, v -> "no " + role.word() + " is called " + v);
            }
            return id;
        }

        private String mod(String id) {
            List<String> ids = chassis.mods().stream().map(Mod::id).toList();
            if (!ids.contains(id)) {
                throw unknown(id, ids, v -> "no mod of " + chassis.id() + " is called " + v);
            }
            return id;
        }

        private static IllegalArgumentException unknown(
                String typed, List<String> known, Function<String, String> words) {
            String hint = Nearest.to(typed, known)
                    .map(n -> "; maybe " + n + "?")
                    .orElse("; known: " + String.join(", ", known));
            return new IllegalArgumentException(words.apply(typed) + hint);
        }
    }
}
