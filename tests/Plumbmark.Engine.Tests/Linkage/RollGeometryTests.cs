using Plumbmark.Engine.Linkage;
using static Plumbmark.Engine.Tests.Linkage.ReferenceCorner;

namespace Plumbmark.Engine.Tests.Linkage;

/// <summary>Instant centres and roll centre against the drawing-board construction, for pivot lines parallel to the car.</summary>
public class RollGeometryTests
{
    private static readonly CornerPoints s_flat = Points with
    {
        UpperFront = Millimetres(110, 330, 410),
        UpperRear = Millimetres(-130, 330, 410),
        LowerFront = Millimetres(160, 250, 190),
        LowerRear = Millimetres(-180, 250, 190),
        // Both joints in the wheel's own plane across the car: only then is the drawing board's plane construction exact.
        UpperJoint = Millimetres(0, 560, 440),
        LowerJoint = Millimetres(0, 615, 170),
        SpinAxis = Vector3.Left,
    };

    [Fact]
    public void FrontView_IsWhereTheTwoArmsLinesMeet()
    {
        var state = Stand(Corner.Of(s_flat), s_flat.WheelCentre.Z);
        var contact = GroundFigures.Of(state, 0.310).Contact;
        var roll = RollGeometry.Of(state, contact);
        // The arms in the front view: (330, 410)-(560, 440) and (250, 190)-(615, 170).
        var (upper, lower) = (30.0 / 230, -20.0 / 365);
        var y = ((190 - (lower * 250)) - (410 - (upper * 330))) / (upper - lower);
        var z = 410 + (upper * (y - 330));
        Assert.Equal(y, 1000 * roll.FrontView.Y, 1e-6);
        Assert.Equal(z, 1000 * roll.FrontView.Z, 1e-6);
        // The line from the contact to the instant centre crosses the centre plane at the roll centre.
        var contactY = 1000 * contact.Y;
        Assert.Equal(z * contactY / (contactY - y), 1000 * roll.RollCentreAboveRoadMetres, 1e-6);
    }

    [Fact]
    public void Centre_OfTwoLikeSides_IsOnTheCentrePlaneAtTheSameHeight()
    {
        var state = Stand(Corner.Of(Points), Points.WheelCentre.Z);
        var contact = GroundFigures.Of(state, 0.310).Contact;
        var centre = RollGeometry.Centre(state, contact, state, contact);
        Assert.Equal(0, centre.Y, 1e-12);
        Assert.Equal(RollGeometry.Of(state, contact).RollCentreAboveRoadMetres, centre.Z - contact.Z, 1e-12);
    }

    [Fact]
    public void GroundFigures_OfTheReferenceCase()
    {
        var ground = GroundFigures.Of(Stand(Corner.Of(Points), Points.WheelCentre.Z), 0.310 / Math.Cos(Radians(1)));
        Assert.Equal(0, ground.Contact.Z, 1e-12);
        // By hand: the axis from (-12, 560, 440) falls 20 back, 55 in for 270 up, so it meets the road at (20.593, 649.630); the wheel's foot is at
        // y = 650 - 310 tan 1 = 644.589. Toe-in of 0.15 degrees turns the offsets by its sine.
        var (sine, cosine) = Math.SinCos(Radians(0.15));
        Assert.Equal((-5.0407 * cosine) - (20.6069 * sine), 1000 * ground.ScrubRadiusMetres, 0.002);
        Assert.Equal((20.6069 * cosine) - (5.0407 * sine), 1000 * ground.TrailMetres, 0.03);
        Assert.Equal(650 - 560 - (55 * 130 / 270.0), 1000 * ground.AxisOffsetAtHubMetres, 0.03);
    }
}
