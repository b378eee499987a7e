using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Journal;
using Plumbmark.Store;
using Plumbmark.Web.Phones;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Server;

/// <summary>What a page or a change is given: what was asked for, and the shed.</summary>
public class PageRequest(HttpContext http, Journals journals)
{
    /// <summary>Every car.</summary>
    public Journals Journals { get; } = journals;

    /// <summary>The exchange itself, for what the other members do not give.</summary>
    public HttpContext Http { get; } = http;

    /// <summary>A value of the address behind <c>?</c>; empty when not given.</summary>
    public string Query(string name) => Http.Request.Query[name].ToString().Trim();

    /// <summary>A part of the path, such as <c>{id}</c>; empty when the route has none.</summary>
    public string Part(string name) => Http.Request.RouteValues[name]?.ToString() ?? "";

    /// <summary>A field of the form, without blanks at its ends; empty when not sent.</summary>
    public string Field(string name) => Http.Request.HasFormContentType ? Http.Request.Form[name].ToString().Trim() : "";

    /// <summary>A file of the form; null when none was chosen.</summary>
    public IFormFile? File(string name) =>
        Http.Request.HasFormContentType && Http.Request.Form.Files[name] is { Length: > 0 } file ? file : null;

    /// <summary>The bytes of a file, and of one that is too large one more than it may have: enough for whoever reads it to say so.</summary>
    /// <param name="file">The file; a request as a whole is bounded by the server.</param>
    /// <param name="most">How many it may have.</param>
    public static byte[] Bytes(IFormFile file, long most = int.MaxValue)
    {
        using var stream = file.OpenReadStream();
        var bytes = new byte[Math.Min(file.Length, most + 1)];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private IReadOnlyList<IFormFile> Files() => Http.Request.HasFormContentType ? Http.Request.Form.Files : [];

    /// <summary>
    /// The name under which what this form says is kept. The same form with the same content has the same name, so that pressing twice
    /// keeps it once; going back and sending something else has another name, so that nothing is lost.
    /// </summary>
    public Guid FormName()
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var fields = Http.Request.HasFormContentType ? Http.Request.Form : FormCollection.Empty;
        foreach (var (name, value) in fields.OrderBy(f => f.Key, StringComparer.Ordinal).Where(f => f.Key != FormFields.ForgeryToken))
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{name.Length}:{name}={value.ToString().Length}:{value};"));
        }

        foreach (var file in Files())
        {
            using var stream = file.OpenReadStream();
            hash.AppendData(SHA256.HashData(stream));
        }

        hash.AppendData(Encoding.UTF8.GetBytes(Http.Request.Path));
        return new Guid(hash.GetHashAndReset().AsSpan(0, 16));
    }
}

/// <summary>A request about one car.</summary>
public sealed class CarRequest(HttpContext http, Journals journals, OpenCar car) : PageRequest(http, journals)
{
    /// <summary>The car as it stood when the request came.</summary>
    public OpenCar Car { get; } = car;

    /// <summary>An address under this car, such as <c>/cars/7/floor</c>.</summary>
    public string Address(string path) => $"/cars/{Car.Id}/{path}";

    /// <summary>Writes acts to the car's journal under this form's name, then goes to a page.</summary>
    public IResult Keep(string thenShow, params Act[] acts) => Keep(thenShow, _ => acts);

    /// <summary>The same, for acts that depend on the car as it stands at that very moment (a new reading's number).</summary>
    public IResult Keep(string thenShow, Func<OpenCar, IReadOnlyList<Act>> acts) =>
        Journals
            .Append(Car.Id, FormName(), LanDoor.PhoneOf(Http)?.Name, acts)
            .Match(
                kept => Show.Redirect(thenShow),
                keptBefore => Show.Redirect(thenShow, Notice.KeptBefore),
                Show.Refused,
                () => Show.NotFound(Say("page.request.there-is-no-such"))
            );
}
