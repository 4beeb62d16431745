namespace CoatPlan.Scheduling;

/// <summary>Which nodes of a graph lie on common cycles.</summary>
/// <remarks>Source: R. Tarjan, "Depth-first search and linear graph algorithms", SIAM J. Comput. 1 (1972), here without recursion.</remarks>
internal static class Components
{
    /// <summary>A number for each node, the same for two nodes exactly when each can be reached from the other.</summary>
    public static int[] Of(Edges edges)
    {
        var count = edges.Count;
        var order = new int[count];
        var low = new int[count];
        var component = new int[count];
        Array.Fill(component, -1);
        var open = new Stack<int>();
        var path = new Stack<(int Node, int Edge)>();
        var visited = 0;
        var components = 0;

        for (var root = 0; root < count; root++)
        {
            if (order[root] != 0)
            {
                continue;
            }

            path.Push((root, 0));
            while (path.TryPop(out var step))
            {
                var (node, edge) = step;
                var targets = edges.From(node);
                if (edge == 0)
                {
                    order[node] = low[node] = ++visited;
                    open.Push(node);
                }
                else
                {
                    low[node] = Math.Min(low[node], low[targets[edge - 1]]);
                }

                while (edge < targets.Length)
                {
                    var target = targets[edge++];
                    if (order[target] == 0)
                    {
                        path.Push((node, edge));
                        path.Push((target, 0));
                        edge = -1;
                        break;
                    }

                    if (component[target] < 0)
                    {
                        low[node] = Math.Min(low[node], order[target]);
                    }
                }

                if (edge < 0 || low[node] != order[node])
                {
                    continue;
                }

                int member;
                do
                {
                    member = open.Pop();
                    component[member] = components;
                }
                while (member != node);

                components++;
            }
        }

        return component;
    }
}
