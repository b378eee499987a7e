using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;
using static Plumbmark.Inspection.Tests.Road.FaultyRoads;
using static Plumbmark.Inspection.Tests.Road.RoadKinematicsLaws;

namespace Plumbmark.Inspection.Tests.Road;

/// <summary>What is missing, cannot be reached or does not go together is said in words.</summary>
public class RoadFaultTests
{
    [Fact]
    public void NothingMeasured_GivesNoVerdict_AndSaysWhatIsWorthMeasuring()
    {
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var answer = RoadInspection.Of(car with { Road = car.Road! with { Parts = [] } }, MeasuredPlaces.None);
        Assert.Equal(Verdict.CannotTellYet, answer.Verdict);
        Assert.NotEmpty(answer.Unmeasured);
        Assert.Contains(answer.Assumed, a => a.StartsWith("Not measured on the left and taken as drawn", StringComparison.Ordinal));
        Assert.All(answer.Figures.Where(f => f.Kind == FigureKind.Camber), f => Assert.Equal(f.U, f.UUnmeasured, 1e-15));
    }

    [Fact]
    public void NothingDrawn_SaysWhatIsMissing()
    {
        var answer = RoadInspection.Of(CarFile.Named("empty", Engine.Lengths.LengthUnit.Inch), MeasuredPlaces.None);
        Assert.Equal(Verdict.CannotTellYet, answer.Verdict);
        Assert.Equal(2, answer.Missing.Count);
        Assert.Empty(answer.Figures);
        Assert.NotEmpty(answer.Cautions);
    }

    [Fact]
    public void AMissingPlace_IsNamed_NotTakenAsZero()
    {
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var front = car.Road!.Front! with { UpperJoint = null, WheelCentre = new Place(Inch(87), Inch(26.5m), null) };
        var answer = RoadInspection.Of(car with { Road = car.Road with { Front = front } }, MeasuredPlaces.None);
        Assert.Contains("The place of the upper outer joint is not told.", answer.Missing);
        Assert.Contains(
            answer.Missing,
            m => m.StartsWith("The place of the front wheel centre is told only in part", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(answer.Figures, f => f.Kind == FigureKind.Camber);
    }

    [Fact]
    public void BeyondReach_IsSaidInWords()
    {
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var road = car.Road! with { Front = car.Road!.Front! with { Bump = Inch(14) } };
        var answer = RoadInspection.Of(car with { Road = road }, MeasuredPlaces.None);
        // One sentence a curve, not one a step.
        var said = answer.Missing.Where(m => m.Contains("is beyond reach from", StringComparison.Ordinal)).ToList();
        Assert.Equal(4, said.Count);
        Assert.Single(said, m => m.StartsWith("Left, as drawn: bump is beyond reach from ", StringComparison.Ordinal));
        Assert.NotEmpty(answer.FoundCurves[Side.Left]);
        Assert.NotEqual(Verdict.True, answer.Verdict);
    }

    [Fact]
    public void APartThatMakesNoSense_DoesNotGoTogether_InWords()
    {
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var part = new PartDeviation("x", CornerPart.UpperArm, Side.Left, [new(PartQuantity.FrontHalf, Inch(-7), null)]);
        var answer = RoadInspection.Of(car with { Road = car.Road! with { Parts = [part] } }, MeasuredPlaces.None);
        Assert.Contains(
            answer.Missing,
            m => m.StartsWith("As found, the left front corner does not go together", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(answer.Figures, f => f is { Kind: FigureKind.Camber, Side: Side.Left });
        Assert.Contains(answer.Figures, f => f is { Kind: FigureKind.Camber, Side: Side.Right });
    }

    [Fact]
    public void RearArms_ThatCannotReach_AreSaidInWords()
    {
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        PartDeviation Low(CornerPart part) => new($"{part}", part, Side.Left, [new(PartQuantity.Up, Inch(-40), null)]);
        var parts = car.Road!.Parts.Where(p => p.Part != CornerPart.RearEye);
        var road = car.Road with
        {
            Rear = RoadKinematicsLaws.Trailing,
            Parts = [.. parts, Low(CornerPart.RearEye), Low(CornerPart.RearOuter)],
        };
        var answer = RoadInspection.Of(car with { Road = road }, MeasuredPlaces.None);
        Assert.Contains(answer.Missing, m => m.StartsWith("As found, the rear arms do not reach", StringComparison.Ordinal));
        Assert.DoesNotContain(answer.Figures, f => f.Kind == FigureKind.Thrust);
    }

    [Fact]
    public void OnePieceArm_OnPivotsTooFarApart_IsNotToBeForced()
    {
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var parts = car.Road!.Parts.Where(p => p is not { Part: CornerPart.LowerFront, Side: Side.Left });
        var part = new PartDeviation("x", CornerPart.LowerFront, Side.Left, [new(PartQuantity.Forward, Inch(0.2m), null)]);
        var front = car.Road.Front! with { LowerArm = Engine.Linkage.ArmMake.OnePiece };
        var answer = RoadInspection.Of(car with { Road = car.Road with { Front = front, Parts = [.. parts, part] } }, MeasuredPlaces.None);
        Assert.Contains(
            answer.Assumed,
            a => a.StartsWith("The left lower arm's pivots are 0.20 in further apart", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void ASlipInTheDrawing_IsNotCalledDamage()
    {
        // 68.625 typed for the upper joint's 86.625: castor as drawn is then sixty degrees, and no car is out for that.
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var joint = car.Road!.Front!.UpperJoint!;
        Assert.Equal(86.625, joint.X!.Value.Inches, 1e-9);
        var front = car.Road.Front with { UpperJoint = joint with { X = Inch(68.625m) } };
        var answer = RoadInspection.Of(car with { Road = car.Road with { Front = front } }, MeasuredPlaces.None);
        Assert.All(
            answer.Figures.Where(f => f.Kind == FigureKind.Castor),
            f => Assert.Equal((true, null, null), (f.IsDrawingBeyondBook, f.Verdict, f.ProbabilityWithin))
        );
        Assert.Contains(
            answer.Missing,
            m =>
                m.StartsWith("The drawing itself gives castor +", StringComparison.Ordinal)
                && m.Contains("check the places", StringComparison.Ordinal)
        );
        Assert.DoesNotContain("castor", answer.Headline, StringComparison.Ordinal);
        Assert.DoesNotContain("cannot cure", answer.Headline, StringComparison.Ordinal);
        Assert.All(answer.Settings, s => Assert.Contains("no setting can be told", Assert.Single(s.Sentences), StringComparison.Ordinal));
    }
}
