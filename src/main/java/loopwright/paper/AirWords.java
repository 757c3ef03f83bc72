package loopwright.paper;

import java.util.List;
import loopwright.loop.air.AirDirection;
import loopwright.rank.Build;

/** Which way a build's mounts blow, in words. */
final class AirWords {

    private AirWords() {}

    static String of(Build build) {
        List<String> in = build.mountsThatBlow(AirDirection.IN);
        List<String> out = build.mountsThatBlow(AirDirection.OUT);
        String ways = in.isEmpty() ? "" : clause(in, "draw");
        ways += in.isEmpty() || out.isEmpty() ? "" : ", ";
        ways += out.isEmpty() ? "" : clause(out, "blow");
        return "fans at " + build.dutyPercent() + " %; " + ways
                + (in.isEmpty() ? "; air comes in by openings" : "")
                + (out.isEmpty() ? "; air leaves by openings" : "");
    }

    private static String clause(List<String> mounts, String verb) {
        String names = mounts.size() == 1
                ? mounts.get(0)
                : String.join(", ", mounts.subList(0, mounts.size() - 1)) + " and " + mounts.get(mounts.size() - 1);
        return names + " " + verb + (mounts.size() == 1 ? "s" : "") + (verb.equals("draw") ? " in" : " out");
    }
}
