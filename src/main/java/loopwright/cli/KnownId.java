package loopwright.cli;

import java.util.Collection;
import loopwright.catalog.read.Nearest;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Ids that the user may type: an unknown one is told with the nearest known. */
record KnownId(CommandSpec spec, String what, Collection<String> known) {

    /**
     * Refuses an unknown id.
     *
     * @throws ParameterException naming the nearest known id, or all of them
     */
    void require(String id) {
        if (!known.contains(id)) {
            String hint = Nearest.to(id, known)
                    .map(n -> "Maybe " + n + "?")
                    .orElse("Known: " + String.join(", ", known) + ".");
            throw new ParameterException(spec.commandLine(), "no " + what + " \"" + id + "\". " + hint);
        }
    }
}
