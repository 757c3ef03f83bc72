package loopwright.catalog.chassis;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.part.Part;

/** A case as its file says it. Lists keep the file's order, which is the order answers use. */
public record Chassis(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        Shell shell,
        Inside inside,
        List<Mount> mounts,
        List<Mod> mods,
        Optional<Wiring> wiring,
        Optional<Standing> standing)
        implements Part {

    /** A chassis that says nothing of cables and of what it stands on. */
    public Chassis(
            String id,
            String title,
            Optional<String> variantOf,
            Purchase buy,
            Shell shell,
            Inside inside,
            List<Mount> mounts,
            List<Mod> mods) {
        this(id, title, variantOf, buy, shell, inside, mounts, mods, Optional.empty(), Optional.empty());
    }
}
