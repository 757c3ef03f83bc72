package loopwright.cli;

/** Program entry. */
public final class Main {
    private Main() {}

    /** Runs the program. */
    public static void main(String[] args) {
        System.exit(App.run(args));
    }
}
