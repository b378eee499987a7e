using Plumbmark.Inspection.Bench;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Bench;

/// <summary>What stands in the form for a part to be laid on the bench.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Side">left, right or none.</param>
/// <param name="Make">How it was made.</param>
/// <param name="Name">What its owner calls it.</param>
/// <param name="Number">A number found on it.</param>
public sealed record LayForm(string Kind, string Side, string Make, string Name, string Number)
{
    /// <summary>The form as it is first shown.</summary>
    public static LayForm Empty { get; } = new(PartKind.LowerWishbone.ToString(), "left", "", "", "");

    /// <summary>What was sent.</summary>
    public static LayForm Sent(PageRequest request) =>
        new(request.Field("kind"), request.Field("side"), request.Field("made"), request.Field("name"), request.Field("number"));
}
