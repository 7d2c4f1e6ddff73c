package railtrim.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was soldered to the board, and where. */
final class Wiring {
    /**
     * @param joined the same two places the usual way round
     * @param lifted whether one lead is off the board, so that the part can be measured on its own
     */
    record Joint(Part part, Node.Pair pair, Node.Pair joined, boolean lifted) {
        Joint(Part part, Node.Pair pair, boolean lifted) {
            this(part, pair, pair.usual(), lifted);
        }
    }

    private final List<Joint> joints = new ArrayList<>();

    List<Joint> joints() {
        return List.copyOf(joints);
    }

    Optional<Joint> jointOf(Part part) {
        return joints.stream().filter(joint -> joint.part() == part).findFirst();
    }

    void solder(Part part, Node.Pair pair) {
        remove(part);
        joints.add(new Joint(part, pair, false));
    }

    void remove(Part part) {
        joints.removeIf(joint -> joint.part() == part);
    }

    void lift(Part part, boolean lifted) {
        jointOf(part).ifPresent(joint -> {
            remove(part);
            joints.add(new Joint(part, joint.pair(), lifted));
        });
    }

    /** Whether anything joined to the board leads here. */
    boolean reaches(Node node) {
        for (int i = 0; i < joints.size(); i++) {
            Joint joint = joints.get(i);
            if (!joint.lifted() && joint.pair().touches(node)) {
                return true;
            }
        }
        return false;
    }

    /** All that is joined to the board between two nodes, in parallel; infinity for nothing. */
    double across(Node.Pair between) {
        Node.Pair pair = between.usual();
        double siemens = 0;
        // A plain loop: while the trimmer turns this is asked for thousands of times.
        for (int i = 0; i < joints.size(); i++) {
            Joint joint = joints.get(i);
            if (!joint.lifted() && joint.joined() == pair) {
                siemens += 1 / joint.part().ohms();
            }
        }
        return 1 / siemens;
    }
}
