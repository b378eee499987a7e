using Plumbmark.Inspection.Bench;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Bench;

/// <summary>A part's card in a form.</summary>
/// <param name="Car">The car.</param>
/// <param name="Part">The part.</param>
/// <param name="Name">What its owner calls it.</param>
/// <param name="Source">Where it came from.</param>
/// <param name="Number">A number to be added.</param>
/// <param name="Happened">Something to be added to its history.</param>
/// <param name="Faults">What is wrong in the form.</param>
public sealed record CardView(OpenCar Car, Part Part, string Name, string Source, string Number, string Happened, FieldFaults Faults)
{
    /// <summary>The page for the part named in the address; null when there is none.</summary>
    public static CardView? Of(CarRequest request, FieldFaults? faults = null)
    {
        if (PartChanges.Part(request) is not { } part)
        {
            return null;
        }

        return faults is null
            ? new CardView(request.Car, part, part.Card.Name ?? "", part.Card.Source ?? "", "", "", new FieldFaults())
            : new CardView(
                request.Car,
                part,
                request.Field("name"),
                request.Field("source"),
                request.Field("number"),
                request.Field("happened"),
                faults
            );
    }
}
