using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>One step of lowered code. It takes its operands from the frame's stack and leaves its result there.</summary>
internal abstract class Instruction
{
    /// <summary>The source it came from, in the body's file.</summary>
    public TextSpan Span { get; set; }

    /// <summary>The same step after an edit of its file.</summary>
    public Instruction Moved(Relocation to)
    {
        var moved = (Instruction)MemberwiseClone();
        moved.Span = to.Of(Span);
        moved.Move(to);
        return moved;
    }

    /// <summary>Moves what it holds of places beside its own.</summary>
    protected virtual void Move(Relocation to)
    {
    }

    public abstract void Run(Machine machine, Frame frame);
}
