using Plumbmark.Inspection.Press;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Press;

/// <summary>What the press room shows: every part in it, and the form for another.</summary>
public sealed record PressView(OpenCar Car, IReadOnlyList<PressView.Row> Rows, string Name, string Kind, FieldFaults Faults)
{
    /// <summary>A part with where it stands.</summary>
    public sealed record Row(string Id, string Name, string Headline);

    /// <summary>The room for a request; with faults, the form shows what was typed.</summary>
    public static PressView Of(CarRequest request, FieldFaults? faults = null)
    {
        var words = new PressWords(request.Car.File.Units);
        var rows = request.Car.File.Press.Select(job => new Row(job.Id, job.Part.Name, words.Headline(PressReport.Of(job).State)));
        return new(request.Car, [.. rows], request.Field("name"), request.Field("kind"), faults ?? new FieldFaults());
    }
}
