using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Plumbmark.Mutation;

/// <summary>A file with all its changes in it at once, each behind a switch: <c>(Switch.On == 7 ? a &gt;= b : a &gt; b)</c>.</summary>
internal sealed class Switched
{
    /// <summary>The switch itself, put into the assembly: 0 is the code as it is.</summary>
    public const string Switch = "namespace Plumbmark.Changed { public static class Switch { public static int On; } }";

    private const string On = "global::Plumbmark.Changed.Switch.On";

    private readonly StringBuilder _text = new();
    private readonly List<(int Start, int End, int Id)> _places = [];
    private readonly ILookup<SyntaxNode, (int Id, Change Change)> _changes;

    private Switched(ILookup<SyntaxNode, (int Id, Change Change)> changes) => _changes = changes;

    /// <summary>The text.</summary>
    public string Text => _text.ToString();

    /// <summary>Writes a file with its changes.</summary>
    public static Switched Of(SyntaxTree tree, IEnumerable<(int Id, SyntaxNode Host, Change Change)> changes)
    {
        var switched = new Switched(changes.ToLookup(c => c.Host, c => (c.Id, c.Change)));
        switched.Write(tree.GetRoot());
        return switched;
    }

    /// <summary>The changes whose text holds or meets the place of an error: the innermost.</summary>
    public int? At(TextSpan place)
    {
        var around = _places.Where(p => p.Start <= place.Start && place.Start <= p.End).ToList();
        return around.Count == 0 ? null : around.MinBy(p => p.End - p.Start).Id;
    }

    private void Write(SyntaxNode node)
    {
        var changes = _changes[node].ToList();
        if (changes.Count == 0)
        {
            WriteInside(node, withTrivia: true);
            return;
        }

        _text.Append(node.GetLeadingTrivia().ToFullString());
        var ends = new List<(int Start, int Id)>();
        foreach (var (id, change) in changes)
        {
            ends.Add((_text.Length, id));
            var changed = change.In(node.ToString(), node.Span.Start);
            _text.Append(
                node switch
                {
                    StatementSyntax => $"if ({On} == {id}) {{ {changed} }} else ",
                    WhenClauseSyntax => $"when {On} == {id} || ",
                    _ => $"({On} == {id} ? {changed} : ",
                }
            );
            if (node is not ExpressionSyntax)
            {
                _places.Add((ends[^1].Start, _text.Length, id));
            }
        }

        if (node is WhenClauseSyntax when)
        {
            _text.Append('(');
            Write(when.Condition);
            _text.Append(')');
        }
        else
        {
            _text.Append(node is StatementSyntax ? "{ " : "(");
            WriteInside(node, withTrivia: false);
            _text.Append(node is StatementSyntax ? " }" : ")");
        }

        if (node is ExpressionSyntax)
        {
            _text.Append(')', changes.Count);
        }

        _places.AddRange(ends.Select(e => (e.Start, _text.Length, e.Id)));
        _text.Append(node.GetTrailingTrivia().ToFullString());
    }

    private void WriteInside(SyntaxNode node, bool withTrivia)
    {
        var (first, last) = (node.GetFirstToken(), node.GetLastToken());
        var (mark, known) = (_text.Length, _places.Count);
        foreach (var child in node.ChildNodesAndTokens())
        {
            if (child.AsNode() is { } inner)
            {
                Write(inner);
            }
            else
            {
                _text.Append(child.AsToken().ToFullString());
            }
        }

        if (!withTrivia)
        {
            var cut = first.LeadingTrivia.FullSpan.Length;
            _text.Remove(mark, cut);
            for (var i = known; i < _places.Count; i++)
            {
                _places[i] = (_places[i].Start - cut, _places[i].End - cut, _places[i].Id);
            }

            _text.Length -= last.TrailingTrivia.FullSpan.Length;
        }
    }
}
