package fingering.page.view;

import com.google.common.collect.ImmutableList;
import fingering.music.print.PrintedPart;
import fingering.plan.Plan;
import fingering.practice.Circle;
import java.util.Optional;

/**
 * The content of a handout: what a student takes home.
 *
 * @param paper the paper
 * @param title the title, not empty
 * @param student the name of the student; empty leaves a line to write it on
 * @param music the instrument, the measures and the tempo
 * @param day the day of the hearing, as text; empty if it is not known
 * @param goal the tempo at the hearing, as text; empty if it is not known
 * @param plan the plan, whose fingers stand above the staff
 * @param rival the plan that the teacher keeps open, whose fingers stand below the staff where it
 *     differs; empty if there is none
 * @param printed what is printed in the part
 * @param circles what to circle
 * @param spots the spots to begin with, the most important first
 * @param ladder the tempo ladder; empty if none can be planned
 * @param care the warning about strain
 */
public record HandoutContent(
    Paper paper,
    String title,
    Optional<String> student,
    String music,
    Optional<String> day,
    Optional<String> goal,
    Plan plan,
    Optional<Plan> rival,
    PrintedPart printed,
    ImmutableList<Circle> circles,
    ImmutableList<PractisedSpot> spots,
    Optional<Ladder> ladder,
    String care) {}
