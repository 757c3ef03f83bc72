package loopwright.catalog.read;

import loopwright.catalog.read.Node.MapNode;

/** Changes an item's tree after it is parsed and before it is bound. */
public interface TreeEdit {

    /** Leaves everything as the file has it. */
    TreeEdit NONE = (kind, id, item) -> item;

    /**
     * The tree that is bound instead.
     *
     * @param id of the item; empty where it has none
     */
    MapNode edited(FileKind kind, String id, MapNode item);
}
