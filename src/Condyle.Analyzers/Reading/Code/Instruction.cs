using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>One step of lowered code. It takes its operands from the frame's stack and leaves its result there.</summary>
internal abstract class Instruction
{
    /// <summary>The source it came from, in the body's file.</summary>
    public TextSpan Span { get; set; }

    public abstract void Run(Machine machine, Frame frame);
}
