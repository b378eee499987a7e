using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// A car's suspension ready to compute with: the drawing of each side, everything found minus drawn with how sure it is, and what is missing or only assumed, in words.
/// </summary>
internal sealed class RoadModel
{
    private RoadModel(RoadSection section, RoadKinematics kinematics, RoadDeviations deviations, RoadRemarks remarks)
    {
        Section = section;
        Kinematics = kinematics;
        Deviations = deviations;
        Remarks = remarks;
    }

    /// <summary>The section it was made from.</summary>
    public RoadSection Section { get; }

    /// <summary>The drawing, ready to compute with.</summary>
    public RoadKinematics Kinematics { get; }

    /// <summary>Everything found minus drawn.</summary>
    public RoadDeviations Deviations { get; }

    /// <summary>What is missing and what was assumed.</summary>
    public RoadRemarks Remarks { get; }

    /// <summary>Makes the model of a car.</summary>
    /// <param name="car">The car; its frame's nominal places are the drawing of the pick-ups.</param>
    /// <param name="measured">What the Floor found of the frame's points.</param>
    public static RoadModel Of(CarFile car, MeasuredPlaces measured)
    {
        var section = car.Road ?? RoadSection.Empty;
        var remarks = new RoadRemarks();
        var places = new PickUpPlaces(car.Frame, measured, remarks);
        var deviations = new RoadDeviations(measured);
        var front = section.Front is { } drawing ? FrontOfModel.Of(drawing, places, deviations, remarks) : null;
        if (section.Front is null)
        {
            remarks.Miss(Texts.Say("road.model.the-front-suspension-is-not"));
        }

        var rear = RearOfModel.Of(section.Rear, places, deviations, remarks);
        deviations.Take(section.Parts.Where(p => p.Withdrawn is null));
        deviations.Take(PartsOfBench.Of(car, section, RoadDisplay.Of(car), remarks));
        deviations.TakeFitted(section.Adjusters);
        UnmeasuredRemarks.Add(section, deviations, front is not null, rear, remarks);
        (section.Unmeasured ?? UnmeasuredAllowance.Usual).Allow(deviations, front is not null, rear);
        var kinematics = new RoadKinematics
        {
            Front = front?.Corners,
            Gear = front?.Gear,
            Rear = rear,
            BumpMetres = section.Front?.Bump?.Metres,
        };
        return new(section, kinematics, deviations, remarks);
    }
}
