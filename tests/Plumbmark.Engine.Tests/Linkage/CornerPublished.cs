using System.Globalization;
using Plumbmark.Engine.Linkage;
using Plumbmark.Testing;
using static Plumbmark.Engine.Tests.Linkage.ReferenceCorner;

namespace Plumbmark.Engine.Tests.Linkage;

/// <summary>Own computation outside this program (reference/linkage/README.md), compared to its printed digits.</summary>
public class CornerPublished
{
    // Six digits are printed: half a unit of the last, and a little for the last digit's own rounding.
    private const double Printed = 0.51e-6;

    public static TheoryData<double[]> Rows()
    {
        var rows = new TheoryData<double[]>();
        foreach (var line in File.ReadLines(Repository.PathTo("reference", "linkage", "double_wishbone_check.csv")).Skip(2))
        {
            rows.Add(line.Split(',').Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray());
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void At_EachHeightOfTheReferenceCase_GivesThePrintedDigits(double[] row)
    {
        var corner = Corner.Of(Points);
        var state = Stand(corner, Points.WheelCentre.Z + (row[0] / 1000));
        var angles = WheelAngles.Of(state);
        Assert.Equal(row[1], Degrees(angles.CamberRadians), Printed);
        Assert.Equal(row[2], Degrees(angles.ToeInRadians), Printed);
        Assert.Equal(row[3], Degrees(angles.CastorRadians), Printed);
        Assert.Equal(row[4], Degrees(angles.KingPinRadians), Printed);
        Assert.Equal(row[5], 1000 * (state.WheelCentre.Y - Points.WheelCentre.Y), Printed);
        Assert.Equal(row[6], 1000 * (state.WheelCentre.X - Points.WheelCentre.X), Printed);
    }

    [Fact]
    public void UpperPivotsThreeMillimetresOutboard() =>
        Check(f => f with { UpperFront = f.UpperFront + Y(3), UpperRear = f.UpperRear + Y(3) }, 0.622243, -0.188244, 0.000831);

    [Fact]
    public void UpperFrontPivotAloneThreeMillimetresOutboard() =>
        Check(f => f with { UpperFront = f.UpperFront + Y(3) }, 0.304447, null, 0.608979);

    [Fact]
    public void UpperPivotsThreeMillimetresForward() =>
        Check(f => f with { UpperFront = f.UpperFront + X(3), UpperRear = f.UpperRear + X(3) }, null, null, -0.635537);

    [Fact]
    public void LowerFrontPivotThreeMillimetresOutboard() =>
        Check(f => f with { LowerFront = f.LowerFront + Y(3) }, -0.303358, -0.513576, -0.683116);

    [Fact]
    public void TrackRodInnerJointThreeMillimetresUp() =>
        Check(f => f with { TrackRodInner = f.TrackRodInner + Z(3) }, null, -0.072062, null);

    private static void Check(Func<CornerFrame, CornerFrame> move, double? camber, double? toeIn, double? castor)
    {
        var parts = CornerParts.Of(Points);
        var before = WheelAngles.Of(Stand(Corner.Of(Points), Points.WheelCentre.Z));
        var after = WheelAngles.Of(Stand(new(move(CornerFrame.Of(Points)), parts), Points.WheelCentre.Z));
        Assert.Equal(camber ?? 0, camber is null ? 0 : Degrees(after.CamberRadians - before.CamberRadians), Printed);
        Assert.Equal(toeIn ?? 0, toeIn is null ? 0 : Degrees(after.ToeInRadians - before.ToeInRadians), Printed);
        Assert.Equal(castor ?? 0, castor is null ? 0 : Degrees(after.CastorRadians - before.CastorRadians), Printed);
    }

    private static Vector3 X(double millimetres) => Millimetres(millimetres, 0, 0);

    private static Vector3 Y(double millimetres) => Millimetres(0, millimetres, 0);

    private static Vector3 Z(double millimetres) => Millimetres(0, 0, millimetres);
}
