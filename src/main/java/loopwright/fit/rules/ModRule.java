package loopwright.fit.rules;

/** A constraint on which mods go together. */
public sealed interface ModRule {

    /** Stable name, printed. */
    String id();

    /** The rule in a sentence. */
    String statement();

    /** A mod that is only possible with another. */
    record Requires(String mod, String required) implements ModRule {
        @Override
        public String id() {
            return "mods.requires";
        }

        @Override
        public String statement() {
            return mod + " needs " + required;
        }
    }

    /** Two mods that cannot both be done. */
    record Excludes(String mod, String other) implements ModRule {
        @Override
        public String id() {
            return "mods.excludes";
        }

        @Override
        public String statement() {
            return mod + " and " + other + " cannot both be done";
        }
    }

    /** A mod that must not be done. */
    record Forbidden(String mod) implements ModRule {
        @Override
        public String id() {
            return "mods.forbidden";
        }

        @Override
        public String statement() {
            return mod + " is not wanted";
        }
    }

    /** A mod that must be done. */
    record Fixed(String mod) implements ModRule {
        @Override
        public String id() {
            return "mods.fixed";
        }

        @Override
        public String statement() {
            return mod + " is done in any case";
        }
    }

    /** A limit on cuts. */
    record CutsAtMost(int cuts, boolean visibleOnly) implements ModRule {
        @Override
        public String id() {
            return visibleOnly ? "mods.visible-cuts" : "mods.cuts";
        }

        @Override
        public String statement() {
            return "at most " + cuts + (visibleOnly ? " cuts that show" : " cuts");
        }
    }
}
