using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>Says when the rear does not go together as found.</summary>
internal static class RearFit
{
    /// <summary>Adds to a model's remarks.</summary>
    public static void Remark(RoadModel model)
    {
        if (model.Kinematics.Rear?.Stand(model.Deviations.Amounts) is { Reach.IsReached: false })
        {
            model.Remarks.Miss(Texts.Say("road.rear-fit.as-found-the-rear-arms"));
        }
    }
}
