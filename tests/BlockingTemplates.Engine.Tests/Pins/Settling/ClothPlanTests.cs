using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Engine.Tests.Projects;

namespace BlockingTemplates.Engine.Tests.Pins.Settling;

public class ClothPlanTests
{
    private static readonly NumberStyle Style = new(text => 0.85 * text.Length);
    private static readonly Lazy<(Plan Plan, Findings Findings)> Demo = new(() => Planned(p => p));

    [Fact]
    public void The_demo_keeps_every_gap_on_stitches_symmetric_and_between_the_spacings()
    {
        var (plan, _) = Demo.Value;
        var cloth = plan.Cloth!;
        Assert.All(cloth.Edges, e => Assert.True(e!.IsKept));
        Assert.True(cloth.WorstScallopMm <= 5.005);
        Assert.All(cloth.Gaps, g => Assert.InRange(g.WidthMm, 15 - 1e-6, 80 + 1e-6));
        Assert.All(plan.Pins.Marks.Where(m => m.Edge == 1), m => Assert.Equal(Math.Round(2 * m.Count!.Value), 2 * m.Count.Value));
        Assert.All(plan.Pins.Marks, m => Assert.NotNull(plan.Pins.PartnerOf(m)));
        Assert.True(cloth.Residual <= 1e-7);
    }

    [Fact]
    public void Every_pin_has_a_pull_in_turn_and_the_first_three_are_approximate()
    {
        var (plan, _) = Demo.Value;
        var turns = plan.Cloth!.InTurn;
        Assert.Equal(plan.Pins.Marks.Count, turns.Count);
        Assert.All(turns.Take(3), t => Assert.True(t.IsApproximate));
        Assert.False(turns[^1].IsApproximate);
        Assert.Equal(plan.Pins.Marks[0].Rest, turns[0].Rest);
        // Late pins find the cloth nearly in place: their pull in turn is far under the pull from rest.
        var late = plan.Pins.Marks.Skip(plan.Pins.Marks.Count / 2).ToList();
        Assert.True(late.Average(m => (m.At - turns[m.Number - 1].Rest).Length) < 0.5 * late.Average(m => m.Pull!.Value.Length));
    }

    [Fact]
    public void A_pull_in_turn_is_the_one_of_the_cloth_held_by_all_earlier_pins_on_a_finer_mesh_within_3_mm()
    {
        var (plan, _) = Demo.Value;
        var cloth = new PinnedCloth(plan.Piece, plan.Cloth!.Material.Likely);
        foreach (var number in new[] { 20, 45, 70, plan.Pins.Marks.Count })
        {
            var rest = cloth.Hold(cloth.Held([.. plan.Pins.Marks.Take(number - 1)]).Support, null, Computation.Whole);
            Assert.True(rest.Converged);
            var at = cloth.StitchAt(plan.Pins.Marks[number - 1], rest.Places);
            Assert.InRange(at.DistanceTo(plan.Cloth.InTurn[number - 1].Rest), 0, 3);
        }
    }

    [Fact]
    public void The_anchor_with_the_least_greatest_force_is_taken_unless_the_maker_names_one()
    {
        var (plan, _) = Demo.Value;
        var trials = plan.Cloth!.Anchors;
        Assert.Equal(3, trials.Count);
        Assert.Equal(plan.Pins.Anchor.Name, trials[0].Anchor);
        Assert.True(trials[0].ForceShare <= trials.Min(t => t.ForceShare) * 1.01);
        Assert.Equal(1, trials.Max(t => t.ForceShare));
        var (asked, _) = Planned(p => p with { Pins = p.Pins with { Anchor = "left tip" } });
        Assert.Equal("left tip", asked.Pins.Anchor.Name);
        Assert.Equal("left tip", asked.Cloth!.Anchors[0].Anchor);
        Assert.Equal(4, asked.Cloth.Anchors.Count);
        var (none, _) = Planned(p => p with { Pins = p.Pins with { Anchor = PinSettings.NoAnchor } });
        Assert.Equal(PinSettings.NoAnchor, none.Pins.Anchor.Name);
        Assert.DoesNotContain(none.Cloth!.Anchors, t => t.IsTaken);
    }

    [Fact]
    public void The_makers_spacing_wins_and_its_scallop_is_told()
    {
        var (plan, findings) = Planned(p => p with { Pins = p.Pins with { Spacing = Length.FromMillimetres(80) } });
        var geometry = Planned(p => p with { Pins = p.Pins with { Spacing = Length.FromMillimetres(80), Anchor = plan.Pins.Anchor.Name } }, Computation.GeometryOnly);
        Assert.False(plan.Cloth!.DecidedSpacing);
        Assert.Equal(geometry.Plan.Pins.Marks.Count, plan.Pins.Marks.Count);
        Assert.True(plan.Cloth.WorstScallopMm > 5);
        Assert.Contains(findings.Notes, n => n.What.Contains("With your spacing of 8.0 cm"));
    }

    [Fact]
    public void Where_the_least_spacing_cannot_hold_the_tolerance_a_note_says_where_and_what_would()
    {
        var (plan, findings) = Planned(p => p with { Pins = p.Pins with { Scallop = Length.FromMillimetres(0.5), MinSpacing = Length.FromMillimetres(40) } });
        Assert.Contains(plan.Cloth!.Edges, e => e is { IsKept: false });
        Assert.Contains(findings.Notes, n => n.Place.StartsWith("edge ", StringComparison.Ordinal) && n.What.Contains("pins.minSpacing") && n.Do.Contains("wire") && n.Do.Contains("more rows"));
    }

    [Fact]
    public void Without_an_unblocked_piece_nothing_is_told_of_the_cloth()
    {
        var (plan, _) = Planned(p => p with { Unblocked = null });
        Assert.Null(plan.Cloth);
    }

    [Fact]
    public void A_soft_cloth_needs_more_pins_and_dips_more_than_a_stiff_one()
    {
        var (plan, _) = Planned(p => p, Computation.Whole);
        var cloth = plan.Cloth!;
        Assert.True(cloth.Stiff!.Pins < plan.Pins.Marks.Count && plan.Pins.Marks.Count < cloth.Soft!.Pins, $"{cloth.Stiff} {plan.Pins.Marks.Count} {cloth.Soft}");
        Assert.True(cloth.Stiff.ScallopMm < cloth.WorstScallopMm && cloth.WorstScallopMm < cloth.Soft.ScallopMm);
    }

    [Fact]
    public void Loads_are_shares_of_the_largest_and_the_pins_balance()
    {
        var (plan, _) = Demo.Value;
        Assert.Equal(plan.Pins.Marks.Count, plan.Cloth!.LoadShares.Count);
        Assert.Equal(1, plan.Cloth.LoadShares.Max());
        Assert.All(plan.Cloth.LoadShares, s => Assert.InRange(s, 0, 1));
        var settled = new PinnedCloth(plan.Piece, plan.Cloth.Material.Likely).Settle(plan.Pins, null, Computation.Whole);
        var sum = settled.Rest.PinLoads.Aggregate(default(Vector), (a, b) => a + b);
        Assert.InRange(sum.Length / settled.Rest.PinLoads.Sum(l => l.Length), 0, 1e-6);
    }

    [Fact]
    public void The_stretch_map_lies_on_the_cloth_and_its_mean_is_that_of_the_areas()
    {
        var (plan, _) = Demo.Value;
        var map = plan.Cloth!.Stretch;
        var area = map.Cells.Count * map.CellMm * map.CellMm;
        Assert.InRange(area / plan.Pins.Pinned.SignedArea(), 0.95, 1.01);
        var grown = map.Cells.Average(c => (1 + c.Along) * (1 + c.Across));
        Assert.InRange(grown / (plan.Pins.Pinned.SignedArea() / plan.Piece.Unblocked!.SignedArea()), 0.95, 1.06);
    }

    [Fact]
    public void A_piece_finished_smaller_than_it_is_stays_slack_and_no_scallop_is_told()
    {
        var (plan, findings) = Planned(p => p with
        {
            Finished = p.Finished with { Sizes = p.Finished.Sizes.ToDictionary(v => v.Key, v => Length.FromMillimetres(0.8 * v.Value.Millimetres)) },
        });
        Assert.NotEmpty(plan.Cloth!.Slack);
        Assert.Contains(findings.Notes, n => n.Place == "cloth" && n.What.Contains("slack"));
        Assert.Contains(plan.Cloth.Gaps, g => g.Determined == false);
    }

    [Fact]
    public void A_time_that_is_up_at_once_leaves_the_spacing_setting_and_says_so()
    {
        var (plan, findings) = Planned(p => p, new() { TimeIsUp = new(true) });
        Assert.Null(plan.Cloth);
        Assert.Equal(Planned(p => p, Computation.GeometryOnly).Plan.Pins.Marks.Count, plan.Pins.Marks.Count);
        Assert.Contains(findings.Notes, n => n.Place == "cloth" && n.What.Contains("time for computing"));
    }

    [Fact]
    public void A_time_that_is_up_on_the_way_gives_the_best_so_far_and_marks_it()
    {
        using var time = new CancellationTokenSource();
        var progress = new Stopping(time, "trying fewer pins");
        var (plan, findings) = Planned(p => p, new() { TimeIsUp = time.Token, Progress = progress, WithEnds = false });
        Assert.True(plan.Cloth!.IsBestSoFar);
        Assert.Empty(plan.Cloth.InTurn);
        Assert.Contains(findings.Notes, n => n.What.Contains("best found so far"));
    }

    [Fact]
    public void Cancelling_ends_it_at_once()
    {
        using var stop = new CancellationTokenSource();
        var progress = new Stopping(stop, "spacing the pins");
        Assert.ThrowsAny<OperationCanceledException>(() => Planned(p => p, new() { Cancellation = stop.Token, Progress = progress }));
    }

    [Fact]
    public void The_same_piece_gives_the_same_plan_again()
    {
        var (first, second) = (Demo.Value.Plan, Planned(p => p).Plan);
        Assert.Equal(first.Pins.Marks, second.Pins.Marks);
        Assert.Equal(first.Cloth!.InTurn, second.Cloth!.InTurn);
        Assert.Equal(first.Cloth.Gaps, second.Cloth.Gaps);
    }

    private static (Plan Plan, Findings Findings) Planned(Func<Project, Project> change, Computation? computation = null)
    {
        var project = change(Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", "lace-triangle.jsonc"))).Project!);
        var findings = new Findings(LengthUnit.Centimetres);
        var plan = Planner.Plan(project, Style, findings, computation ?? new() { WithEnds = false });
        Assert.Empty(findings.Problems);
        return (plan!, findings);
    }

    private sealed class Stopping(CancellationTokenSource source, string at) : IProgress<ComputingStep>
    {
        public void Report(ComputingStep value)
        {
            if (value.Doing == at)
                source.Cancel();
        }
    }
}
