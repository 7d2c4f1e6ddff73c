package railtrim.practice;

import java.util.List;

/** Resistance between two nodes of the unpowered board: every path between the probes carries test current. */
final class Network {
    /** So weak that no meter sees it; keeps a node nothing is joined to from making the sum unsolvable. */
    private static final double LEAK = 1e-10;

    private Network() {}

    /** @param ohms more than 0, finite */
    record Branch(Node from, Node to, double ohms) {}

    /** Nodal analysis: one ampere in at {@code red}, out at {@code black}; the voltage between them is the resistance. */
    static double between(List<Branch> branches, Node red, Node black) {
        if (red == black) {
            return 0;
        }
        int size = Node.values().length;
        double[][] sum = new double[size][size + 1];
        for (int i = 0; i < size; i++) {
            sum[i][i] = LEAK;
        }
        for (Branch branch : branches) {
            int from = branch.from().ordinal();
            int to = branch.to().ordinal();
            double siemens = 1 / branch.ohms();
            sum[from][from] += siemens;
            sum[to][to] += siemens;
            sum[from][to] -= siemens;
            sum[to][from] -= siemens;
        }
        sum[red.ordinal()][size] = 1;
        sum[black.ordinal()][size] = -1;
        double[] volts = solve(sum);
        return volts[red.ordinal()] - volts[black.ordinal()];
    }

    /** Gaussian elimination; the matrix is symmetric and dominated by its diagonal, so no pivoting is needed. */
    private static double[] solve(double[][] rows) {
        int size = rows.length;
        for (int i = 0; i < size; i++) {
            for (int j = i + 1; j < size; j++) {
                double times = rows[j][i] / rows[i][i];
                for (int k = i; k <= size; k++) {
                    rows[j][k] -= times * rows[i][k];
                }
            }
        }
        double[] answer = new double[size];
        for (int i = size - 1; i >= 0; i--) {
            double rest = rows[i][size];
            for (int k = i + 1; k < size; k++) {
                rest -= rows[i][k] * answer[k];
            }
            answer[i] = rest / rows[i][i];
        }
        return answer;
    }
}
