namespace Plumbmark.Web.Book;

/// <summary>Addresses of pages and figures of the book.</summary>
internal static class BookAddresses
{
    public static string Page(long car, string page) => $"/cars/{car}/book/page?id={Uri.EscapeDataString(page)}";

    public static string Figure(long car, string page, string figure) =>
        $"/cars/{car}/book/figure?page={Uri.EscapeDataString(page)}&figure={Uri.EscapeDataString(figure)}";
}
