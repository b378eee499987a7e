using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Inspection.Tests.Road;

/// <summary>The slopes of every basic number over every parameter against central differences of the numbers themselves.</summary>
public class RoadKinematicsLaws
{
    public static TheoryData<string> Layouts => ["rack", "box on link", "box on arms", "one-piece arms", "trunnion", "trailing arms"];

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Slopes_AgreeWithDifferences(string layout)
    {
        var kinematics = Model(layout).Kinematics;
        var theta = Enumerable.Range(0, RoadParameters.Count).Select(i => 0.0015 * Math.Sin(1 + (2.3 * i))).ToArray();
        var slopes = kinematics.Slopes(theta);
        const double Step = 1e-5;
        for (var parameter = 0; parameter < RoadParameters.Count; parameter++)
        {
            double[] varied = [.. theta];
            varied[parameter] = theta[parameter] + Step;
            var more = kinematics.Basics(varied);
            varied[parameter] = theta[parameter] - Step;
            var less = kinematics.Basics(varied);
            for (var basic = 0; basic < RoadKinematics.BasicCount; basic++)
            {
                var difference = (more[basic] - less[basic]) / (2 * Step);
                // The steering input's own difference step leaves 1e-6 in the turns; the trunnion's slopes are differences themselves.
                Assert.True(
                    Math.Abs(difference - slopes[basic][parameter]) < 2e-5,
                    $"{layout}: basic {(Basic)(basic % RoadKinematics.BasicsPerSide)} by parameter {parameter}: {slopes[basic][parameter]} but {difference}"
                );
            }
        }
    }

    [Fact]
    public void Basics_OfTheMirroredFaults_AreTheMirroredNumbers()
    {
        var kinematics = Model("rack").Kinematics;
        var theta = Enumerable.Range(0, RoadParameters.Count).Select(i => 0.002 * Math.Sin(5 + (1.7 * i))).ToArray();
        double[] mirrored = [.. theta[RoadParameters.PerSide..], .. theta[..RoadParameters.PerSide]];
        var (basics, other) = (kinematics.Basics(theta), kinematics.Basics(mirrored));
        for (var i = 0; i < RoadKinematics.BasicsPerSide; i++)
        {
            Assert.Equal(basics[i], other[i + RoadKinematics.BasicsPerSide], 1e-11);
            Assert.Equal(basics[i + RoadKinematics.BasicsPerSide], other[i], 1e-11);
        }
    }

    internal static RoadModel Model(string layout)
    {
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var road = car.Road!;
        var front = layout switch
        {
            "box on link" => road.Front! with { SteeringBox = Box(false) },
            "box on arms" => road.Front! with { SteeringBox = Box(true) },
            "one-piece arms" => road.Front! with { UpperArm = ArmMake.OnePiece, LowerArm = ArmMake.OnePiece },
            "trunnion" => road.Front! with { TrunnionOffset = Inch(0.7m), TrunnionLead = Inch(0.083m) },
            _ => road.Front!,
        };
        var rear = layout == "trailing arms" ? Trailing : road.Rear;
        return RoadModel.Of(car with { Road = road with { Front = front, Rear = rear } }, MeasuredPlaces.None);
    }

    internal static RearDrawing Trailing { get; } =
        new RearDrawing.TrailingArms(
            new PickUp.AtPlace(At(12, 8, 11)),
            new PickUp.AtPlace(At(16, 19, 11)),
            At(0, 25, 12),
            Angle.FromDegrees(-1),
            Angle.FromDegrees(0.1m)
        );

    internal static Place At(decimal x, decimal y, decimal z) => new(Inch(x), Inch(y), Inch(z));

    internal static Engine.Lengths.Length Inch(decimal inches) => Engine.Lengths.Length.FromInches(inches);

    private static SteeringBoxDrawing Box(bool onArms) =>
        new(At(88, 13, 11.2m), At(82.5m, 13, 11.2m), At(87.5m, -13, 11.2m), At(82.5m, -13, 11.2m), onArms);
}
