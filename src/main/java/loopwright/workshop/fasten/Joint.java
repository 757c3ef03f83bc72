package loopwright.workshop.fasten;

import java.util.List;

/**
 * Screws that do one thing at one place.
 *
 * @param mount where
 * @param layers from under the head to the thread
 * @param frees what comes loose when they are undone
 * @param count how many
 */
public record Joint(
        String mount, Holding holding, List<Clamped> layers, ThreadSeat seat, List<String> frees, Count count) {

    /** Copies. */
    public Joint {
        layers = List.copyOf(layers);
        frees = List.copyOf(frees);
    }

    /** What screws hold. */
    public enum Holding {
        /** The radiator, through everything between. */
        RADIATOR("radiator"),
        /** Fans at the radiator's far face. */
        FAR_FANS("far fans"),
        /** Fans without a radiator. */
        BARE_FANS("fans"),
        /** A raised cover. */
        COVER("cover");

        private final String word;

        Holding(String word) {
            this.word = word;
        }

        /** In a word. */
        public String word() {
            return word;
        }
    }

    /** How many. */
    public record Count(int holes, int least) {

        /** Screws of a fan's frame. */
        private static final int PER_FAN = 4;

        /** A body's: four for one fan, six to eight for two, so two more at least for each further one. */
        static Count ofBody(int fans) {
            return new Count(PER_FAN * fans, fans == 1 ? PER_FAN : 2 + 2 * fans);
        }

        /** Fans that nothing else holds. */
        static Count ofFans(int fans) {
            return new Count(PER_FAN * fans, PER_FAN * fans);
        }
    }
}
