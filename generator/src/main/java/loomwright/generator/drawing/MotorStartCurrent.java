package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Dash;
import loomwright.picture.Graph;
import loomwright.picture.Picture;
import loomwright.picture.Point;
import loomwright.picture.Style;
import loomwright.quantity.Units;

/** Current of a motor from standstill to full speed: a sketch, so the time has no numbers. */
final class MotorStartCurrent implements Drawing {
    private static final double SWITCHED_ON = 1;
    private static final double END = 10;
    private static final double STEPS = 30;

    @Override
    public String name() {
        return "motor-start-current";
    }

    @Override
    public List<String> takes() {
        return List.of("running", "starting");
    }

    @Override
    public Picture draw(Given given) {
        given.rising(Units.AMPERE, "running", "starting");
        double running = given.number("running", Units.AMPERE);
        double starting = given.number("starting", Units.AMPERE);
        Graph graph = new Graph(Axis.bare("Time", 0, END), Axis.fromZero("Current (A)", 1.25 * starting));
        graph.line("jammed: stays here", Style.WARN, Dash.NONE, level(starting));
        graph.line("running " + given.label("running"), Style.ACCENT, Dash.NONE, start(running, starting));
        graph.dot("starting " + given.label("starting"), SWITCHED_ON, starting);
        return graph.picture(
                "Current of a motor as it starts",
                "A sketch of current against time. At the moment of switching on, the current jumps to " + given.text("starting")
                        + ". As the motor gathers speed it falls along a curve to " + given.text("running")
                        + " and stays level. A broken line from the peak stays level and is marked jammed.");
    }

    private static List<Point> level(double amperes) {
        return List.of(new Point(SWITCHED_ON, amperes), new Point(END, amperes));
    }

    /** The usual shape of it, an exponential fall; how long it takes depends on the motor. */
    private static List<Point> start(double running, double starting) {
        List<Point> points = new ArrayList<>();
        points.add(new Point(0, 0));
        points.add(new Point(SWITCHED_ON, 0));
        for (int i = 0; i <= STEPS; i++) {
            double time = SWITCHED_ON + (END - SWITCHED_ON) * i / STEPS;
            points.add(new Point(time, running + (starting - running) * Math.exp(SWITCHED_ON - time)));
        }
        return points;
    }
}
