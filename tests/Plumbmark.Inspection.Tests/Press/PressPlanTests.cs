using Plumbmark.Engine.Bending;
using Plumbmark.Inspection.Press;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Tests.Press;

/// <summary>From gaps to blocks and ram, and the measurements that speak against pressing.</summary>
public class PressPlanTests
{
    // An invented horn of channel section with a kink of 0.03 rad at 180 mm; gaps under a straightedge across the hollow, to 0.1 mm.
    private const string Horn = """
        {
          "format": "plumbmark-car", "version": 1, "units": "mm",
          "press": [ {
            "id": "horn",
            "part": { "name": "right horn", "kind": "horn", "make": "pressed", "material": "mild-sheet", "length": 500,
              "history": { "cracked": "no", "kinked": "no", "torn": "no", "corroded": "no", "welded": "no", "heated": "no", "pressedBefore": "no" } },
            "section": { "shape": "channel", "depth": 40, "width": 25, "wall": 3 },
            "lines": [ { "name": "top flange", "plane": "ram", "from": "hollow", "gaps": [
              { "at": 0, "gap": 0 }, { "at": 50, "gap": 1.0 }, { "at": 100, "gap": 1.9 }, { "at": 150, "gap": 2.9 }, { "at": 180, "gap": 3.5 },
              { "at": 200, "gap": 3.3 }, { "at": 250, "gap": 2.7 }, { "at": 300, "gap": 2.2 }, { "at": 350, "gap": 1.6 }, { "at": 400, "gap": 1.1 }, { "at": 500, "gap": 0 } ] } ],
            "crackTests": [ { "id": "t", "method": "magnetic", "found": "no" } ]
          } ]
        }
        """;

    [Fact]
    public void GapsBecomeABend_AndTheRamStandsOnIt()
    {
        var report = PressFiles.Report(Horn);
        Assert.Equal(0.180, report.Findings.Bend!.CentreMetres, 0.008);
        Assert.Equal(0.030, report.Findings.Bend.AngleRadians, 0.002);
        Assert.False(report.Findings.IsSweep);
        var layout = report.Plan!.Layout;
        Assert.True(layout.IsProposed);
        Assert.Equal(report.Findings.Bend.CentreMetres, layout.RamMetres!.Value, 1e-12);
        Assert.Equal(0.12, layout.LeftArmMetres, 1e-9); // three depths of 40 mm
        Assert.Equal(0.12, layout.RightArmMetres, 1e-9);
        Assert.NotNull(layout.Packer);
        Assert.Equal(0.030 * 0.06, report.Plan.OutByMetres, 0.0002); // θ·ab/(a+b) under the ram
    }

    [Fact]
    public void ASweep_GetsALongSpanAndMorePlacesForTheRam()
    {
        // An arc of 0.04 rad over 240 mm around 250 mm: the gap under a straightedge from end to end.
        static double Gap(double at) => 0.04 * ((at / 2) - Bend.UnitShape(at - 0.25, 0.24)) * 1000;
        var gaps = string.Join(
            ", ",
            Enumerable.Range(0, 11).Select(i => System.FormattableString.Invariant($"{{ \"at\": {i * 50}, \"gap\": {Gap(i * 0.05):F1} }}"))
        );
        var start = Horn.IndexOf("\"gaps\": [", StringComparison.Ordinal);
        var end = Horn.IndexOf("] } ]", start, StringComparison.Ordinal);
        var report = PressFiles.Report(Horn[..start] + $"\"gaps\": [ {gaps} " + Horn[end..]);
        Assert.True(report.Findings.IsSweep);
        var layout = report.Plan!.Layout;
        Assert.True(layout.LeftArmMetres > report.Findings.Bend!.LengthMetres / 2);
        Assert.Equal(2, layout.MoreRamStations.Count);
        Assert.True(layout.MoreRamStations[0] < layout.RamMetres && layout.RamMetres < layout.MoreRamStations[1]);
    }

    [Fact]
    public void UnevenArms_NeedUnevenBlocks()
    {
        var layout = PressFiles
            .Report(Horn.With("\"crackTests\"", "\"setUp\": { \"leftArm\": 90, \"rightArm\": 150, \"ram\": 180 }, \"crackTests\""))
            .Plan!.Layout;
        Assert.False(layout.IsProposed);
        Assert.Equal((0.09 - 0.15) * 0.030 / 2, layout.RightBlockHigherMetres, 0.0001); // the left arm is shorter: its block stands higher
    }

    [Fact]
    public void Estimates_SpanTheYieldRange()
    {
        var plan = PressFiles.Report(Horn).Plan!;
        Assert.Equal(140e6, plan.Low.Curve.Steel.YieldStressPascals);
        Assert.Equal(280e6, plan.High.Curve.Steel.YieldStressPascals);
        Assert.Equal(2, plan.High.YieldLoadNewtons / plan.Low.YieldLoadNewtons, 1e-9);
        Assert.True(plan.Low.YieldLoadNewtons < plan.Low.CollapseLoadNewtons);
        Assert.Equal("ram-side flange", plan.Wall!.Value.Plate.Name);
        Assert.InRange(plan.WallSetMetres, 1e-4, 0.1);
    }

    [Fact]
    public void ATwistMoreThanMinor_IsRefused()
    {
        const string Winding =
            "\"winding\": [ { \"at\": 0, \"left\": 20, \"right\": 20, \"width\": 25 }, { \"at\": 500, \"left\": 20.8, \"right\": 20, \"width\": 25 } ], \"crackTests\"";
        Refused(RefusalReason.Twisted, Horn.With("\"crackTests\"", Winding));
        Assert.IsNotType<PressState.Refused>(PressFiles.Report(Horn.With("\"crackTests\"", Winding.With("20.8", "20.05"))).State);
    }

    [Fact]
    public void ABendInTheSecondPlane_IsRefused()
    {
        const string Side =
            "{ \"name\": \"web\", \"plane\": \"side\", \"from\": \"table\", \"gaps\": [ { \"at\": 0, \"gap\": 0 }, { \"at\": 100, \"gap\": 1.2 }, { \"at\": 180, \"gap\": 2.2 }, { \"at\": 300, \"gap\": 1.4 }, { \"at\": 400, \"gap\": 0.7 }, { \"at\": 500, \"gap\": 0 } ] }";
        Refused(RefusalReason.TwoPlanes, Horn.With("] } ],\n    \"crackTests\"", $"] }}, {Side} ],\n    \"crackTests\""));
    }

    [Fact]
    public void AnArmBentByMoreThanHalfAnInch_IsRefused() =>
        Refused(RefusalReason.BentTooFar, PressJobSamples.LowerArm.With("[0.18, 0.19, 0.19]", "[0.55]"));

    [Fact]
    public void MoreStrainThanTheLimit_IsRefused() =>
        Refused(RefusalReason.StrainOverLimit, PressJobSamples.LowerArm.With("\"strain\": 0.05", "\"strain\": 0.001"));

    [Fact]
    public void AWallThatBucklesFirst_IsRefused() =>
        Refused(RefusalReason.BucklesFirst, Horn.With("\"width\": 25, \"wall\": 3", "\"width\": 60, \"wall\": 1"));

    [Fact]
    public void WithoutGapsOrSetUp_ItAsksForThem()
    {
        var text = Horn.With("\"lines\": [ {", "\"lines\": [], \"note\": \"x\" } ], \"frame\": { \"points\": [] }, \"readings\": [] }");
        text = text[..text.IndexOf("\"name\": \"top flange\"", StringComparison.Ordinal)].TrimEnd();
        var needs = Assert.IsType<PressState.Asking>(PressFiles.Report(text).State);
        Assert.Contains(needs.Questions, q => q.Topic == "crackTest");
        var plan = Assert.IsType<PlanOutcome.NeedsMore>(PressPlan.Of(PressFiles.Job(text)));
        Assert.Contains(plan.Missing, m => m.Contains("gaps", StringComparison.Ordinal));
    }

    [Fact]
    public void FlangesThatTurnDifferently_AreTold()
    {
        var report = PressFiles.Report(
            Horn.With(
                "] } ],\n    \"crackTests\"",
                "] }, { \"name\": \"bottom flange\", \"plane\": \"ram\", \"from\": \"hollow\", \"gaps\": [ { \"at\": 0, \"gap\": 0 }, { \"at\": 100, \"gap\": 1.0 }, { \"at\": 180, \"gap\": 1.8 }, { \"at\": 300, \"gap\": 1.1 }, { \"at\": 400, \"gap\": 0.5 }, { \"at\": 500, \"gap\": 0 } ] } ],\n    \"crackTests\""
            )
        );
        Assert.True(report.Findings.LinesDisagree);
        Assert.False(PressFiles.Report(Horn).Findings.LinesDisagree);
    }

    [Fact]
    public void EveryPlannedMetal_NamesItsSource()
    {
        foreach (var entry in MaterialTable.All.Where(e => e.Yield is not null))
        {
            Assert.True(entry.Source.Length > 10);
            Assert.True(entry.Yield!.LowPascals < entry.Yield.HighPascals);
        }

        Assert.Equal(Enum.GetValues<Material>().Length, MaterialTable.All.Count);
    }

    private static void Refused(RefusalReason reason, string text)
    {
        var refused = Assert.IsType<PressState.Refused>(PressFiles.Report(text).State);
        Assert.Equal(reason, Assert.Single(refused.Refusals).Reason);
    }
}
