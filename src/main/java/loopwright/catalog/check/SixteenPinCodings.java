package loopwright.catalog.check;

import java.util.stream.Collectors;
import loopwright.catalog.standard.StandardElectric.CardFeeds;

/** The published codings of the 16-pin plug. */
final class SixteenPinCodings {

    private SixteenPinCodings() {}

    /** Whether a figure is one of them. */
    static boolean are(CardFeeds feeds, int watts) {
        return feeds.codings().stream().anyMatch(c -> c.powerW() == watts);
    }

    /** All of them, for messages. */
    static String words(CardFeeds feeds) {
        return feeds.codings().stream().map(c -> Curve.plain(c.powerW())).collect(Collectors.joining(", "));
    }
}
