package loopwright.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/** One run of the program as a shell would see it. */
record Ran(int code, String out, String err) {

    /** Runs the program. */
    static Ran of(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = App.run(new App.Streams(new PrintWriter(out), new PrintWriter(err)), args);
        return new Ran(code, out.toString(), err.toString());
    }

    List<String> outLines() {
        return out.lines().toList();
    }

    List<String> errLines() {
        return err.lines().toList();
    }
}
