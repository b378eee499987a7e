using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Plumbmark.Mutation;

/// <summary>
/// Every small change that could be made to a file: comparisons at and across their boundary, arithmetic, and/or, conditions turned round or taken away,
/// numbers, true/false, fallbacks, patterns, first/last and any/all, returned values, statements left out. Texts are not changed: snapshots hold them.
/// </summary>
internal sealed class Changes : CSharpSyntaxWalker
{
    private static readonly Dictionary<SyntaxKind, string[]> s_operators = new()
    {
        [SyntaxKind.LessThanToken] = ["<=", ">="],
        [SyntaxKind.LessThanEqualsToken] = ["<", ">"],
        [SyntaxKind.GreaterThanToken] = [">=", "<="],
        [SyntaxKind.GreaterThanEqualsToken] = [">", "<"],
        [SyntaxKind.EqualsEqualsToken] = ["!="],
        [SyntaxKind.ExclamationEqualsToken] = ["=="],
        [SyntaxKind.AmpersandAmpersandToken] = ["||"],
        [SyntaxKind.BarBarToken] = ["&&"],
        [SyntaxKind.PlusToken] = ["-"],
        [SyntaxKind.MinusToken] = ["+"],
        [SyntaxKind.AsteriskToken] = ["/"],
        [SyntaxKind.SlashToken] = ["*"],
        [SyntaxKind.PercentToken] = ["*"],
        [SyntaxKind.PlusEqualsToken] = ["-="],
        [SyntaxKind.MinusEqualsToken] = ["+="],
        [SyntaxKind.AsteriskEqualsToken] = ["/="],
        [SyntaxKind.SlashEqualsToken] = ["*="],
        [SyntaxKind.PlusPlusToken] = ["--"],
        [SyntaxKind.MinusMinusToken] = ["++"],
        [SyntaxKind.OrKeyword] = ["and"],
        [SyntaxKind.AndKeyword] = ["or"],
    };

    private static readonly Dictionary<string, string> s_names = Pairs(
        "Any All, First Last, FirstOrDefault LastOrDefault, Min Max, MinBy MaxBy, OrderBy OrderByDescending, ThenBy ThenByDescending, Skip Take, "
            + "Floor Ceiling, Exists TrueForAll, Sin Cos, TrimStart TrimEnd, IsFinite IsNaN"
    );

    private readonly string _file;
    private readonly SyntaxTree _tree;
    private readonly List<(SyntaxNode Host, Change Change)> _found = [];

    private Changes(string file, SyntaxTree tree) => (_file, _tree) = (file, tree);

    /// <summary>All changes to a file, each with what must be written twice for it.</summary>
    public static IReadOnlyList<(SyntaxNode Host, Change Change)> To(string file, SyntaxTree tree)
    {
        var walker = new Changes(file, tree);
        walker.Visit(tree.GetRoot());
        return [.. walker._found.DistinctBy(f => f.Change)];
    }

    public override void VisitAttributeList(AttributeListSyntax node) { }

    // What a parameter is where nothing is given must be a constant, and a switch is none.
    public override void VisitParameter(ParameterSyntax node) { }

    public override void VisitBinaryExpression(BinaryExpressionSyntax node)
    {
        foreach (var other in s_operators.GetValueOrDefault(node.OperatorToken.Kind(), []))
        {
            Put(node, $"({node.Left} {other} {node.Right})");
        }

        if (node.IsKind(SyntaxKind.CoalesceExpression))
        {
            Put(node, $"({node.Right})");
        }

        base.VisitBinaryExpression(node);
    }

    public override void VisitAssignmentExpression(AssignmentExpressionSyntax node)
    {
        PutOther(node.OperatorToken);
        base.VisitAssignmentExpression(node);
    }

    public override void VisitPrefixUnaryExpression(PrefixUnaryExpressionSyntax node)
    {
        PutOther(node.OperatorToken, andNot: false);
        if (node.Kind() is SyntaxKind.LogicalNotExpression or SyntaxKind.UnaryMinusExpression)
        {
            Put(node, $"({node.Operand})");
        }

        base.VisitPrefixUnaryExpression(node);
    }

    public override void VisitPostfixUnaryExpression(PostfixUnaryExpressionSyntax node)
    {
        PutOther(node.OperatorToken);
        base.VisitPostfixUnaryExpression(node);
    }

    public override void VisitBinaryPattern(BinaryPatternSyntax node)
    {
        PutOther(node.OperatorToken);
        base.VisitBinaryPattern(node);
    }

    public override void VisitRelationalPattern(RelationalPatternSyntax node)
    {
        PutOther(node.OperatorToken);
        base.VisitRelationalPattern(node);
    }

    public override void VisitUnaryPattern(UnaryPatternSyntax node)
    {
        Put(node, $"({node.Pattern})");
        base.VisitUnaryPattern(node);
    }

    public override void VisitIsPatternExpression(IsPatternExpressionSyntax node)
    {
        Put(node, $"!({node})");
        base.VisitIsPatternExpression(node);
    }

    public override void VisitLiteralExpression(LiteralExpressionSyntax node)
    {
        switch (node.Token.Value)
        {
            case int n:
                Put(node, n == 0 ? "1" : $"({n.ToString(CultureInfo.InvariantCulture)} + 1)");
                break;
            case double x:
                Put(node, x == 0 ? "1.0" : $"(2 * {node})");
                break;
            case bool b:
                Put(node, b ? "false" : "true");
                break;
        }
    }

    public override void VisitIfStatement(IfStatementSyntax node)
    {
        PutNegated(node.Condition);
        base.VisitIfStatement(node);
    }

    public override void VisitWhileStatement(WhileStatementSyntax node)
    {
        PutNegated(node.Condition);
        base.VisitWhileStatement(node);
    }

    public override void VisitConditionalExpression(ConditionalExpressionSyntax node)
    {
        PutNegated(node.Condition);
        base.VisitConditionalExpression(node);
    }

    public override void VisitWhenClause(WhenClauseSyntax node)
    {
        Put(node, string.Empty);
        base.VisitWhenClause(node);
    }

    public override void VisitReturnStatement(ReturnStatementSyntax node)
    {
        if (node.Expression is not (null or LiteralExpressionSyntax or { RawKind: (int)SyntaxKind.DefaultLiteralExpression }))
        {
            Put(node.Expression, "default!");
        }

        base.VisitReturnStatement(node);
    }

    public override void VisitYieldStatement(YieldStatementSyntax node)
    {
        Put(node, ";");
        base.VisitYieldStatement(node);
    }

    public override void VisitExpressionStatement(ExpressionStatementSyntax node)
    {
        if (!node.ToString().Contains("Exception.Throw", StringComparison.Ordinal))
        {
            Put(node, ";");
            base.VisitExpressionStatement(node);
        }
    }

    public override void VisitThrowExpression(ThrowExpressionSyntax node) { }

    public override void VisitThrowStatement(ThrowStatementSyntax node) { }

    public override void VisitInvocationExpression(InvocationExpressionSyntax node)
    {
        if (node.Expression is MemberAccessExpressionSyntax { Name: IdentifierNameSyntax name, Expression: var on })
        {
            if (s_names.TryGetValue(name.Identifier.Text, out var other))
            {
                Put(name, other);
            }

            if (name.Identifier.Text is "Where" or "Distinct" or "Reverse" or "OrderBy" or "Trim")
            {
                Put(node, on.ToString());
            }

            if ($"{on}.{name}" is "Math.Abs" or "Math.Sqrt")
            {
                Put(node, node.ArgumentList.ToString());
            }
        }

        base.VisitInvocationExpression(node);
    }

    private static Dictionary<string, string> Pairs(string text)
    {
        var pairs = text.Split(", ").Select(p => p.Split(' ')).ToList();
        return pairs.Concat(pairs.Select(p => p.Reverse().ToArray())).ToDictionary(p => p[0], p => p[1], StringComparer.Ordinal);
    }

    /// <summary>A comparison is turned round by its own change; only a condition of another form is negated here.</summary>
    private void PutNegated(ExpressionSyntax condition)
    {
        if (
            condition is not (IsPatternExpressionSyntax or PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.LogicalNotExpression })
            && !(
                condition is BinaryExpressionSyntax binary
                && binary.OperatorToken.Kind() is SyntaxKind.EqualsEqualsToken or SyntaxKind.ExclamationEqualsToken
            )
        )
        {
            Put(condition, $"!({condition})");
        }
    }

    private void PutOther(SyntaxToken token, bool andNot = true)
    {
        if (andNot || token.Kind() is SyntaxKind.PlusPlusToken or SyntaxKind.MinusMinusToken)
        {
            foreach (var other in s_operators.GetValueOrDefault(token.Kind(), []))
            {
                Put(token.Parent!, token.Span.Start, token.Text, other);
            }
        }
    }

    private void Put(SyntaxNode node, string to) => Put(node, node.Span.Start, node.ToString(), to);

    private void Put(SyntaxNode node, int start, string from, string to)
    {
        if (HostOf(node) is { } host)
        {
            var line = _tree.GetText().Lines.GetLineFromPosition(start).LineNumber + 1;
            _found.Add((host, new Change(_file, start, from, to, line) { IsOnce = IsOnce(node) }));
        }
    }

    /// <summary>The smallest whole of which there can be two versions, one of them with the change; null where there is none.</summary>
    private static SyntaxNode? HostOf(SyntaxNode node)
    {
        SyntaxNode? host = null;
        foreach (var at in node.AncestorsAndSelf())
        {
            if (at is PatternSyntax or SwitchExpressionArmSyntax or SimpleNameSyntax || at is WhenClauseSyntax && at == node)
            {
                host = at is WhenClauseSyntax ? at : null;
                if (host is not null)
                {
                    return host;
                }
            }
            else if (at is MemberDeclarationSyntax or SwitchLabelSyntax or ParameterSyntax)
            {
                break;
            }
            else if (
                at is StatementSyntax or ExpressionSyntax
                && !at.Ancestors().TakeWhile(a => a is not ExpressionSyntax).Any(a => a is PatternSyntax)
            )
            {
                host = at.Parent is ExpressionStatementSyntax statement ? statement : at;
                break;
            }
        }

        var isTwice =
            host?.DescendantNodes(n => n is not (SwitchExpressionArmSyntax or LambdaExpressionSyntax))
                .Any(n => n is SingleVariableDesignationSyntax) == true;
        return isTwice ? null : host;
    }

    private static bool IsOnce(SyntaxNode node) =>
        node.Ancestors().OfType<MemberDeclarationSyntax>().FirstOrDefault() switch
        {
            FieldDeclarationSyntax f => f.Modifiers.Any(SyntaxKind.StaticKeyword),
            PropertyDeclarationSyntax { Initializer: not null } p => p.Modifiers.Any(SyntaxKind.StaticKeyword),
            ConstructorDeclarationSyntax c => c.Modifiers.Any(SyntaxKind.StaticKeyword),
            _ => false,
        };
}
