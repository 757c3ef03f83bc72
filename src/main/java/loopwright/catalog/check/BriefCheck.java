package loopwright.catalog.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.WorkCalendar;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.TubeFitting;
import loopwright.catalog.read.FileKind;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;

/** A brief against the catalogue: ids are there, every role has a candidate, sockets go together. */
public final class BriefCheck {

    /** Start days that are believed: years beyond them are slips of the finger. */
    private static final LocalDate EARLIEST = LocalDate.of(2000, 1, 1);

    private static final LocalDate LATEST = LocalDate.of(2199, 12, 31);

    private final Item item;
    private final Map<String, Part> parts;
    private final Problems problems;

    private BriefCheck(Item item, Map<String, Part> parts, Problems problems) {
        this.item = item;
        this.parts = parts;
        this.problems = problems;
    }

    /** Notes what of the brief the catalogue cannot answer. */
    public static void run(Item item, Map<String, Part> parts, String currency, Problems problems) {
        item.as(Brief.class).ifPresent(brief -> new BriefCheck(item, parts, problems).brief(brief, currency));
    }

    private void brief(Brief brief, String currency) {
        if (!brief.terms().currency().equals(currency)) {
            problems.add(item.problem(
                    "terms.currency", brief.terms().currency(), currency + ", the currency of the catalogue", ""));
        }
        if (brief.limits().coolantMaxC() <= brief.limits().roomC()) {
            problems.add(item.problem(
                    "limits.coolant_max_C",
                    String.valueOf(brief.limits().coolantMaxC()),
                    "above room_C, " + brief.limits().roomC(),
                    "Coolant is never cooler than the room's air."));
        }
        if (brief.chassis().isEmpty()) {
            problems.add(item.problem("chassis", "no chassis", "at least one chassis", ""));
        }
        reference(Chassis.class).checkAll("chassis", brief.chassis());
        reference(Drive.class).checkAll("parts.drives", brief.parts().drives());
        forbidden(brief);
        for (Role role : Role.values()) {
            role.wish(brief).ifPresent(choice -> choice(role, choice));
            if (candidates(role, brief).isEmpty()) {
                problems.add(item.problem(
                        role.path(),
                        "no " + FileKind.ofPart(role.kind()).one() + " that it allows",
                        "at least one in the catalogue",
                        ""));
            }
        }
        brief.loop()
                .reservoirs()
                .ifPresent(c -> reference(Reservoir.class).checkAll("loop.reservoirs.any_of", c.anyOf()));
        brief.loop()
                .fittings()
                .ifPresent(c -> reference(TubeFitting.class).checkAll("loop.fittings.any_of", c.anyOf()));
        brief.calendar()
                .flatMap(WorkCalendar::startDay)
                .filter(day -> day.isBefore(EARLIEST) || day.isAfter(LATEST))
                .ifPresent(day -> problems.add(item.problem(
                        "calendar.start", day.toString(), EARLIEST + " to " + LATEST, "Maybe the year is mistyped?")));
        brief.look().ifPresent(new LookCheck(item, problems)::check);
        new FittingsTakeTube(item, parts, problems).check(brief);
        new RolesGoTogether(item, problems).check(role -> candidates(role, brief));
    }

    private Reference reference(Class<? extends Part> kind) {
        List<String> known =
                parts.values().stream().filter(kind::isInstance).map(Part::id).toList();
        return new Reference(item, known, "a " + FileKind.ofPart(kind).one() + " of the catalogue", problems);
    }

    private void forbidden(Brief brief) {
        if (!brief.chassis().stream().allMatch(id -> parts.get(id) instanceof Chassis)) {
            return; // a chassis that is not there has been told; its mods may well be right
        }
        List<String> mods = brief.chassis().stream()
                .map(parts::get)
                .flatMap(p -> p instanceof Chassis c ? ChassisIds.mods(c).stream() : Stream.empty())
                .toList();
        new Reference(item, mods, "a mod of the brief's chassis", problems)
                .checkAll("limits.mods.forbid", brief.limits().mods().forbid());
    }

    private void choice(Role role, Choice choice) {
        reference(role.kind()).checkAll(role.path() + ".any_of", choice.anyOf());
    }

    private List<Part> candidates(Role role, Brief brief) {
        Optional<Choice> choice = role.wish(brief);
        List<String> anyOf = choice.map(Choice::anyOf).orElse(List.of());
        int floor = choice.flatMap(Choice::performanceMin).orElse(0);
        return parts.values().stream()
                .filter(role.kind()::isInstance)
                .filter(p -> anyOf.isEmpty() || anyOf.contains(p.id()))
                .filter(p -> Role.performanceOf(p).orElse(Integer.MAX_VALUE) >= floor)
                .toList();
    }
}
