package loopwright.workshop.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Published networks through our own critical path. */
class CriticalPathTest {

    private final Clock clock = Clock.withoutNights();

    /**
     * Taylor, Introduction to Management Science, solutions to ch. 8, first solved network: activities on arrows
     * 1-2:7, 1-3:10, 2-4:6, 3-4:5, 3-5:4, 4-5:3, 5-6:2.
     */
    @Test
    void firstNetworkOfTaylor() {
        int[][] arrows = {{1, 2, 7}, {1, 3, 10}, {2, 4, 6}, {3, 4, 5}, {3, 5, 4}, {4, 5, 3}, {5, 6, 2}};
        List<Job> jobs = new ArrayList<>();
        List<Network.Link> links = new ArrayList<>();
        for (int i = 0; i < arrows.length; i++) {
            jobs.add(new Job(arrows[i][0] + "-" + arrows[i][1], arrows[i][2], false, 0));
            for (int j = 0; j < arrows.length; j++) {
                if (arrows[j][1] == arrows[i][0]) {
                    links.add(new Network.Link(j, i, 0));
                }
            }
        }
        CriticalPath path = CriticalPath.of(new Network(jobs, links), clock);
        assertThat(path.end()).isEqualTo(20);
        assertThat(path.earliest()).containsExactly(0, 0, 7, 10, 10, 15, 18);
        assertThat(slacks(path, 7)).containsExactly(2, 0, 2, 0, 4, 0, 0);
        List<Integer> latestFinish = IntStream.range(0, 7)
                .mapToObj(i -> path.latest().get(i) + jobs.get(i).steps())
                .toList();
        assertThat(latestFinish).containsExactly(9, 10, 15, 15, 18, 18, 20);
    }

    /** Hillier, Lieberman, Introduction to Operations Research, Reliable Construction Co.: 44 weeks. */
    @Test
    void reliableConstruction() {
        Network network = reliable();
        CriticalPath path = CriticalPath.of(network, clock);
        assertThat(path.end()).isEqualTo(44);
        Map<String, Integer> slack = Map.of("D", 4, "G", 4, "H", 4, "I", 2, "K", 1, "M", 4);
        for (int i = 0; i < network.jobs().size(); i++) {
            String name = network.jobs().get(i).id();
            assertThat(path.slack(i)).as(name).isEqualTo(slack.getOrDefault(name, 0));
        }
        Map<String, Integer> starts = Map.of("D", 16, "G", 22, "H", 29, "I", 16, "J", 25, "K", 33, "M", 38, "N", 38);
        starts.forEach((name, start) ->
                assertThat(path.earliest().get(name.charAt(0) - 'A')).as(name).isEqualTo(start));
    }

    static Network reliable() {
        String[] rows = {
            "A2", "B4 A", "C10 B", "D6 C", "E4 C", "F5 E", "G7 D", "H9 E G", "I7 C", "J8 F I", "K4 J", "L5 J", "M2 H",
            "N6 K L"
        };
        List<Job> jobs = new ArrayList<>();
        List<Network.Link> links = new ArrayList<>();
        for (int i = 0; i < rows.length; i++) {
            String[] words = rows[i].split(" ");
            jobs.add(new Job(words[0].substring(0, 1), Integer.parseInt(words[0].substring(1)), false, 0));
            for (int k = 1; k < words.length; k++) {
                links.add(new Network.Link(words[k].charAt(0) - 'A', i, 0));
            }
        }
        return new Network(jobs, links);
    }

    private static List<Integer> slacks(CriticalPath path, int count) {
        return IntStream.range(0, count).mapToObj(path::slack).toList();
    }
}
