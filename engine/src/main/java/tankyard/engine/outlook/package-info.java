/**
 * When does each thing run out if the water grows on as it does?
 *
 * <p>Start at {@link tankyard.engine.outlook.Outlook}: it takes the studied cases with the time in
 * which the water doubles and gives one {@link tankyard.engine.outlook.RunOut} for each thing that
 * runs out within five years, the first first.
 *
 * <p>The water of every well follows {@code today x 2^(t/Td)}; oil, gas and running hours stay. A
 * case's own water factor is left out, since it stands for a later day itself: the cases' seasons
 * and what runs at once count. What is a rate against a limit is solved for the month in closed
 * form; the window is worked out anew at each trial month until its room is nothing.
 *
 * <p>Left out: oil that declines, wells that are added or lost, an injection well that plugs up.
 * Immutable; no clock: months count from today, whenever that is. Uses {@code study} and {@code
 * window}; used by {@code checks}, {@code report} and the studio. Checked in {@code
 * DesignsCheckedTest} against a lease worked by hand.
 */
package tankyard.engine.outlook;
