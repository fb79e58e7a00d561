using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Texts that are put together: each piece keeps its origin.</summary>
internal sealed partial class Lowerer
{
    private void Concatenate(IBinaryOperation binary)
    {
        var parts = PartsOf(binary);
        foreach (var part in parts)
            Value(part);
        var last = parts[parts.Count - 1].Syntax as LiteralExpressionSyntax;
        var seam = last is null ? null : Seams.Of(last, body.Path);
        Emit(new JoinText([.. parts.Select(_ => new Hole())], seam));
    }

    /// <summary>Pushes the parts of an interpolated text and tells which are holes.</summary>
    private List<Hole?> Interpolate(IInterpolatedStringOperation text)
    {
        var holes = new List<Hole?>();
        foreach (var part in text.Parts)
        {
            switch (part)
            {
                case IInterpolatedStringTextOperation { Text: var literal }:
                    Literal(literal);
                    break;
                case IInterpolationOperation hole:
                    Fill(hole.Expression, hole.FormatString, hole.Alignment);
                    break;
                case IInterpolatedStringAppendOperation { AppendCall: IInvocationOperation { Arguments: [var first, ..] arguments } } append:
                    if (append.Kind == OperationKind.InterpolatedStringAppendLiteral)
                        Literal(first.Value);
                    else
                        Fill(first.Value, Argument("format"), Argument("alignment"));
                    break;

                    IOperation? Argument(string name) => arguments.FirstOrDefault(argument => argument.Parameter?.Name == name)?.Value;
                default:
                    Emit(new PushConstant(TextValue.Open));
                    holes.Add(null);
                    break;
            }
        }

        return holes;

        void Literal(IOperation literal)
        {
            Emit(new PushConstant(new TextValue((string)(literal.ConstantValue.Value ?? ""), [], [OriginOf(text.Syntax)])));
            holes.Add(null);
        }

        void Fill(IOperation expression, IOperation? format, IOperation? width)
        {
            Value(Unconverted(expression));
            holes.Add(new Hole(format?.ConstantValue.Value as string, width?.ConstantValue.Value as int? ?? 0));
        }
    }

    // What takes the text chooses its culture; a handler of the user's own is handed the parts one after another.
    private void Handler(IInterpolatedStringHandlerCreationOperation handler)
    {
        var isOwn = handler.Type is { } type && IsRead(type);
        if (handler.Content is not IInterpolatedStringOperation text || (isOwn && handler.HandlerCreation.DescendantsAndSelf().Any(part => part is IInterpolatedStringHandlerArgumentPlaceholderOperation)))
        {
            Emit(new Unread(Quoted(handler.Syntax), KeyOf(handler)));
            return;
        }

        if (!isOwn)
        {
            Emit(new MakeFormattable(Interpolate(text)));
            return;
        }

        var made = Temporary();
        Hold(handler.HandlerCreation, made);
        textHandlers.Push(made);
        foreach (var append in text.Parts.OfType<IInterpolatedStringAppendOperation>())
            Effect(append.AppendCall);
        textHandlers.Pop();
        Emit(new LoadSlot(made));
    }

    /// <summary>Text that is put together is so here as well, even if it is constant: each piece keeps its origin.</summary>
    private static bool IsJoinedText(IOperation operation) =>
        operation is IInterpolatedStringOperation or IBinaryOperation { OperatorKind: BinaryOperatorKind.Add, Type.SpecialType: SpecialType.System_String, OperatorMethod: null or { ContainingType.SpecialType: SpecialType.System_String } };
}
