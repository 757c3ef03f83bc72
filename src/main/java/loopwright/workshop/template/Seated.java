package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.standard.Standards;
import loopwright.fit.MountFrame;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Dot;

/**
 * A hole pattern where it goes on a mount: chassis coordinates of its centre.
 *
 * @param lowHmm how far back along the mount it may slide, 0 or less
 * @param highHmm how far on, 0 or more
 * @param hangs whether something hangs there; else it is the middle of the seat
 */
record Seated(Pattern pattern, int alongHmm, int asideHmm, int lowHmm, int highHmm, boolean hangs) {

    /** What hangs, where it hangs. */
    static Seated of(Setting.Hung hung) {
        return new Seated(hung.pattern(), hung.alongHmm(), hung.asideHmm(), 0, 0, true);
    }

    /** A seat's pattern: where it hangs, if it hangs in this seat, else in the middle of its first range. */
    static Optional<Seated> of(Mount.Seat seat, Optional<Setting.Hung> hung) {
        Optional<Seated> there = hung.filter(h -> h.pattern().equals(seat.pattern()))
                .filter(h -> holding(seat.sidewaysMm(), h.asideHmm()).isPresent())
                .flatMap(h -> holding(seat.lengthwiseMm(), h.alongHmm())
                        .map(span -> new Seated(
                                h.pattern(),
                                h.alongHmm(),
                                h.asideHmm(),
                                span.from().valueHmm() - h.alongHmm(),
                                span.to().valueHmm() - h.alongHmm(),
                                true)));
        return there.or(() -> middle(seat));
    }

    /** The same place with nothing there. */
    Seated empty() {
        return new Seated(pattern, alongHmm, asideHmm, lowHmm, highHmm, false);
    }

    private static Optional<Seated> middle(Mount.Seat seat) {
        Optional<Span> along = known(seat.lengthwiseMm());
        Optional<Span> aside = known(seat.sidewaysMm());
        if (along.isEmpty() || aside.isEmpty()) {
            return Optional.empty();
        }
        int middle = middle(along.get());
        return Optional.of(new Seated(
                seat.pattern(),
                middle,
                middle(aside.get()),
                along.get().from().valueHmm() - middle,
                along.get().to().valueHmm() - middle,
                false));
    }

    private static int middle(Span span) {
        return Math.floorDiv(span.from().valueHmm() + span.to().valueHmm(), 2);
    }

    private static Optional<Span> known(List<Span> spans) {
        return spans.stream()
                .filter(s -> !s.from().isUnknown() && !s.to().isUnknown())
                .findFirst();
    }

    private static Optional<Span> holding(List<Span> spans, int atHmm) {
        return spans.stream()
                .filter(s -> !s.from().isUnknown() && !s.to().isUnknown())
                .filter(s -> s.from().valueHmm() <= atHmm && atHmm <= s.to().valueHmm())
                .findFirst();
    }

    /** The middles of its fans, along the mount. */
    List<Dot> fans(MountFrame frame, PanelView view) {
        List<Dot> out = new ArrayList<>();
        for (int i = 0; i < pattern.fans(); i++) {
            out.add(dot(frame, view, (2 * i - (pattern.fans() - 1)) * pattern.sizeMm() * Hundredths.PER_MM / 2, 0));
        }
        return out;
    }

    /** Its screws: four for each fan, fan by fan. */
    List<Dot> screws(MountFrame frame, PanelView view, Standards standards) {
        int half = fan(standards).holePitchMm().valueHmm() / 2;
        List<Dot> out = new ArrayList<>();
        for (int i = 0; i < pattern.fans(); i++) {
            int fan = (2 * i - (pattern.fans() - 1)) * pattern.sizeMm() * Hundredths.PER_MM / 2;
            for (int along : List.of(-half, half)) {
                for (int aside : List.of(-half, half)) {
                    out.add(dot(frame, view, fan + along, aside));
                }
            }
        }
        return out;
    }

    /** A point so far along and across from its centre. */
    Dot dot(MountFrame frame, PanelView view, int byAlongHmm, int byAsideHmm) {
        return view.dot(frame.lengthwise(), alongHmm + byAlongHmm, asideHmm + byAsideHmm);
    }

    /** What the standards say of its fans. */
    Standards.FanPattern fan(Standards standards) {
        return standards.fans().stream()
                .filter(f -> f.sizeMm() == pattern.sizeMm())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "standards.yaml has no fan pattern of " + pattern.sizeMm() + " mm"));
    }
}
