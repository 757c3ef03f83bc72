package loopwright.answer.why;

import static loopwright.answer.why.WishWords.mm;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.part.Part;
import loopwright.fit.Breaches;
import loopwright.fit.Candidate;
import loopwright.fit.Fact;
import loopwright.fit.FitCase;
import loopwright.fit.Lacking;
import loopwright.fit.MountFrame;
import loopwright.fit.Openings;
import loopwright.fit.Wish;
import loopwright.fit.rules.Role;

/** Facts as sentences with the numbers of a candidate that breaks them. */
final class FactWords {

    /** Ids named before "and n more". */
    private static final int NAMED_MAX = 4;

    private static final Map<Axis, String> ALONG =
            Map.of(Axis.X, "from left to right", Axis.Y, "from front to rear", Axis.Z, "in height");

    private final Breaches breaches;
    private final FitCase fitCase;
    private final Chassis chassis;
    private final Openings openings;
    private final PartRuleWords rules;

    FactWords(Breaches breaches) {
        this.breaches = breaches;
        this.fitCase = breaches.wished().asked();
        this.chassis = fitCase.chassis();
        this.openings = fitCase.openings();
        this.rules = new PartRuleWords(fitCase);
    }

    /** The fact as it stands against a candidate that breaks it. */
    Stated fact(Fact fact, Candidate candidate) {
        if (fact.kind() == Fact.Kind.CLEAR) {
            Lacking.Lack lack = lack(fact, candidate);
            return Stated.ofRoom(fact.id(), clear(lack, candidate), lack.lackHmm());
        }
        return Stated.of(fact.id(), sentence(fact, candidate));
    }

    Lacking.Lack lack(Fact fact, Candidate candidate) {
        return breaches.lacks(candidate).stream()
                .filter(l -> l.fact().equals(fact))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nothing is lacking for " + fact.id()));
    }

    private String sentence(Fact fact, Candidate candidate) {
        BriefLimits.ModLimits mods = fitCase.brief().limits().mods();
        List<Mod> done = candidate.mods().mods(chassis);
        String[] two = fact.about().split(":", 2);
        return switch (fact.kind()) {
            case WISH -> "you want " + WishWords.of(wish(fact), chassis);
            case FORBIDDEN -> "the brief forbids " + WishWords.mod(fact.about(), chassis);
            case VISIBLE_CUTS ->
                "the brief allows " + cuts(mods.visibleCutsMax(), true) + ", not "
                        + done.stream().mapToInt(m -> m.look().visibleCuts()).sum();
            case CUTS ->
                "the brief allows " + cuts(mods.cutsMax(), false) + ", not "
                        + done.stream()
                                .mapToInt(m -> m.look().visibleCuts() + m.look().hiddenCuts())
                                .sum();
            case CHOICE -> choice(fact.about());
            case NEEDS -> WishWords.mod(two[0], chassis) + " needs " + WishWords.mod(two[1], chassis);
            case EXCLUDES ->
                WishWords.mod(two[0], chassis) + " and " + WishWords.mod(two[1], chassis) + " cannot both be done";
            case PARTS -> rules.sentence(fact.about(), candidate.parts());
            case PLACE -> "no place that can be used holds " + placed(fact.about(), candidate);
            case SEAT -> seat(frame(fact), candidate);
            case OPEN -> open(frame(fact), candidate);
            case OUTSIDE ->
                "outside the " + fact.about() + " are "
                        + mm(openings.outsideDepthHmm(frame(fact).mount(), candidate.mods()))
                        + " mm of air; a stack wants " + mm(outsideMinHmm()) + " mm";
            case KNOWN -> body(fact) + " is not measured: " + String.join(", ", breaches.toMeasure(fact, candidate));
            case CLEAR -> throw new IllegalStateException("told with what is lacking");
        };
    }

    private int outsideMinHmm() {
        return fitCase.catalog().practice().air().outsideDepthMinMm().valueHmm();
    }

    private static String cuts(Optional<Integer> most, boolean visible) {
        int cuts = most.orElse(0);
        String which = !visible ? " in all" : cuts > 1 ? " that show" : " that shows";
        return (cuts == 0 ? "no cut" : "at most " + cuts + (cuts == 1 ? " cut" : " cuts")) + which;
    }

    /** A body of a fact in words: its mount or its own name. */
    static String body(Fact fact) {
        String[] two = fact.about().split(":", 2);
        if (two.length == 1) {
            return "the " + two[0];
        }
        return two[0].equals("stack") ? "what hangs at the " + two[1] : "the " + two[0] + " " + two[1];
    }

    Wish wish(Fact fact) {
        return breaches.wished().wishes().stream()
                .filter(w -> w.text().equals(fact.about()))
                .findFirst()
                .orElseThrow();
    }

    private String choice(String role) {
        if (role.equals("fans")) {
            String own = fitCase.shapes().fans().values().stream()
                    .map(g -> mm(g.get(0).frame().thicknessMm().valueHmm()))
                    .distinct()
                    .collect(Collectors.joining(" or "));
            return "the brief's fans are " + own + " mm thick";
        }
        List<String> ids = fitCase.candidates(Role.valueOf(role.toUpperCase(Locale.ROOT))).stream()
                .map(Part::id)
                .toList();
        return "the brief's choice of " + role + " is " + named(ids);
    }

    private static String named(List<String> ids) {
        return ids.stream().limit(NAMED_MAX).collect(Collectors.joining(", "))
                + (ids.size() > NAMED_MAX ? " and " + (ids.size() - NAMED_MAX) + " more" : "");
    }

    /** A part in a place, by role and id. */
    String placed(String role, Candidate candidate) {
        if (role.startsWith("drive:")) {
            int k = Integer.parseInt(role.substring("drive:".length()));
            return "the " + role + " (" + fitCase.placedDrives().get(k - 1).id() + ")";
        }
        return "the " + role + id(role, candidate);
    }

    private static String id(String role, Candidate candidate) {
        return candidate.parts().parts().entrySet().stream()
                .filter(e -> e.getKey().word().equals(role))
                .map(e -> " (" + e.getValue().id() + ")")
                .findFirst()
                .orElse("");
    }

    private MountFrame frame(Fact fact) {
        return fitCase.frames().stream()
                .filter(f -> f.mount().id().equals(fact.about()))
                .findFirst()
                .orElseThrow();
    }

    private String seat(MountFrame frame, Candidate candidate) {
        TreeSet<Pattern> own = new TreeSet<>();
        frame.mount().seats().forEach(s -> own.add(s.pattern()));
        Optional<Pattern> wanted = candidate.shapeAt(frame).map(s -> s.pattern());
        String has = own.isEmpty()
                ? "no hole pattern"
                : "holes for " + own.stream().map(Pattern::toString).collect(Collectors.joining(" and "));
        String pattern = wanted.map(Pattern::toString).orElse("more");
        List<String> makers = chassis.mods().stream()
                .filter(m -> m.effect().seats().stream()
                        .anyMatch(s -> s.mount().equals(frame.mount().id())
                                && wanted.filter(s.seat().pattern()::equals).isPresent()))
                .map(m -> WishWords.mod(m.id(), chassis))
                .toList();
        if (own.stream().anyMatch(p -> wanted.filter(p::equals).isPresent())) {
            return "the " + frame.mount().id() + " has its holes for " + pattern + " where they are";
        }
        return "the " + frame.mount().id() + " has " + has + "; "
                + (makers.isEmpty()
                        ? "no mod of this chassis makes " + pattern
                        : pattern + " comes with " + String.join(" or ", makers));
    }

    private String open(MountFrame frame, Candidate candidate) {
        double area = candidate
                .shapeAt(frame)
                .map(s -> openings.freeArea(frame.mount(), s.pattern(), candidate.mods()))
                .orElse(frame.mount().opening().freeArea());
        return "the " + frame.mount().id() + " is open by " + share(area) + "; the brief wants at least "
                + share(fitCase.brief().limits().freeAreaMin());
    }

    private static String share(double share) {
        return String.format(Locale.ROOT, "%.2f", share);
    }

    private String clear(Lacking.Lack lack, Candidate candidate) {
        String one = named(lack.one(), candidate);
        String other = named(lack.other(), candidate);
        return lack.depth()
                .map(d -> one + (lack.one().endsWith("fans") ? " need " : " needs ") + mm(d.neededHmm())
                        + " mm inwards, " + mm(d.thereHmm()) + " mm are there to " + other + ": " + mm(lack.lackHmm())
                        + " mm short")
                .orElse(one + " and " + other + " come " + mm(lack.lackHmm()) + " mm too close "
                        + ALONG.get(lack.axis()));
    }

    /** A body's name, with the part where a role names it. */
    String named(String what, Candidate candidate) {
        for (Map.Entry<Role, Part> part : candidate.parts().parts().entrySet()) {
            String role = part.getKey() == Role.BLOCK
                    ? "processor block"
                    : part.getKey().word();
            if (what.equals(role)) {
                return what + " (" + part.getValue().id() + ")";
            }
        }
        return what;
    }
}
