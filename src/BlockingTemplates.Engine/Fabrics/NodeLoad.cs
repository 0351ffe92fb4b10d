using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A force on a node that keeps its direction.</summary>
/// <param name="Node">Its number.</param>
/// <param name="Force">The force, in the cloth's stiffness unit times millimetres.</param>
public readonly record struct NodeLoad(int Node, Vector Force);
