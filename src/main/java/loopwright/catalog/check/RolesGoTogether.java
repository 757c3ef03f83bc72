package loopwright.catalog.check;

import java.util.List;
import java.util.function.Function;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;

/** Some board, processor and block that a brief allows share a socket, and some memory the board's generation. */
record RolesGoTogether(Item item, Problems problems) {

    void check(Function<Role, List<Part>> candidates) {
        List<Board> boards = of(Board.class, candidates.apply(Role.BOARD));
        List<Processor> processors = of(Processor.class, candidates.apply(Role.PROCESSOR));
        List<Block> blocks = of(Block.class, candidates.apply(Role.BLOCK));
        List<Memory> memory = of(Memory.class, candidates.apply(Role.MEMORY));
        if (boards.isEmpty()) {
            return;
        }
        List<String> sockets = boards.stream()
                .map(b -> b.sockets().processorSocket())
                .distinct()
                .toList();
        List<String> shared = sockets.stream()
                .filter(s -> processors.stream().anyMatch(p -> p.socket().equals(s)))
                .toList();
        if (!processors.isEmpty() && shared.isEmpty()) {
            note("parts.processor", "no processor for the socket " + String.join(" or ", sockets), "a board's socket");
        } else if (!blocks.isEmpty()
                && !shared.isEmpty()
                && blocks.stream().noneMatch(b -> b.sockets().stream().anyMatch(shared::contains))) {
            note("parts.processor_block", "no block for the socket " + String.join(" or ", shared), "the socket");
        }
        List<String> generations = boards.stream()
                .map(b -> b.sockets().memory().generation())
                .distinct()
                .toList();
        if (!memory.isEmpty() && memory.stream().noneMatch(m -> generations.contains(m.generation()))) {
            note("parts.memory", "no memory of generation " + String.join(" or ", generations), "the generation");
        }
    }

    private void note(String path, String found, String what) {
        problems.add(item.problem(path, found, "at least one part of " + what, ""));
    }

    private static <P extends Part> List<P> of(Class<P> kind, List<Part> parts) {
        return parts.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
