package loomwright.circuit.check;

import loomwright.circuit.Joint;
import loomwright.circuit.Node;
import loomwright.joint.JointRule;

/** How warm each joint gets at the largest current. */
final class JointCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.figures() instanceof Joint joint) {
            findings.add(Check.JOINT_HEAT, node, JointRule.heat("The heat in one joint of " + node.title(), JointRule.heat(joint.one(), context.designCurrent(node))));
        }
    }
}
