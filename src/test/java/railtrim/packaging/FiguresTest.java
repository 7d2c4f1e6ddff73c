package railtrim.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Sums by hand. */
class FiguresTest {
    private static final String HEAD =
            "GROUP,PACKAGE,CLASS,INSTRUCTION_MISSED,INSTRUCTION_COVERED,BRANCH_MISSED,BRANCH_COVERED,LINE_MISSED,LINE_COVERED";

    @Test
    void classesAreSummedByPackageAndOverAll() {
        Map<String, long[]> covered = Figures.covered(List.of(
                HEAD,
                "r,railtrim.heat,A,0,9,1,3,2,8",
                "r,railtrim.heat,B,0,9,0,0,0,10",
                "r,railtrim.job,C,5,5,1,1,5,5"));
        assertEquals(List.of("railtrim.heat", "railtrim.job", "all"), List.copyOf(covered.keySet()));
        // 18 of 20 lines and 3 of 4 branches; 23 of 30 lines over all.
        assertEquals("90.0 %", Figures.part(covered.get("railtrim.heat"), 7));
        assertEquals("75.0 %", Figures.part(covered.get("railtrim.heat"), 5));
        assertEquals("76.7 %", Figures.part(covered.get("all"), 7));
    }

    @Test
    void aChangeThatNoTestNoticedCountsAgainst() {
        String changes = "<mutations><mutation detected='true' status='KILLED'></mutation>"
                + "<mutation detected='false' status='SURVIVED'></mutation>"
                + "<mutation detected='true' status='TIMED_OUT'></mutation></mutations>";
        // 2 of 3.
        assertEquals("66.7 %", Figures.noticed(changes));
    }
}
