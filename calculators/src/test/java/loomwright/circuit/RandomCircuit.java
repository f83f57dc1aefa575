package loomwright.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** Circuits by chance, the same for the same seed: any parts in any order, any choice, any quantity its field takes. */
public final class RandomCircuit {
    private RandomCircuit() {}

    public static Circuit of(long seed) {
        Random random = new Random(seed);
        List<Part> parts = new ArrayList<>();
        int count = 1 + random.nextInt(25);
        while (parts.size() < count) {
            PartKind kind = parts.isEmpty() ? PartKind.SUPPLY : PartKind.values()[1 + random.nextInt(PartKind.values().length - 1)];
            String fedBy = parts.isEmpty() ? "" : feeding(parts, random).id();
            Part part = part(kind.key() + "-" + parts.size(), kind, fedBy, random);
            if (part != null) {
                parts.add(kind.isTriggered() && random.nextBoolean() ? part.triggeredBy(feeding(parts, random).id()) : part);
            }
        }
        return new Circuit(random.nextBoolean() ? "" : "Circuit " + seed, parts);
    }

    private static Part feeding(List<Part> parts, Random random) {
        Part part = parts.get(random.nextInt(parts.size()));
        return part.kind().feeds() ? part : parts.get(0);
    }

    private static Part part(String id, PartKind kind, String fedBy, Random random) {
        List<String> texts = new ArrayList<>();
        for (Field field : kind.fields()) {
            texts.add(random.nextInt(3) == 0 ? "" : text(field, random));
        }
        if (kind == PartKind.CONDUCTOR && random.nextInt(5) > 0) {
            texts.set(0, "iso-6722-1");
            texts.set(1, List.of("0.5 mm2", "1,5 mm²", "2.5", "6 mm²", "16 mm²").get(random.nextInt(5)));
        }
        if (kind == PartKind.LOAD) {
            texts.set(1, 1 + random.nextInt(80) + " W");
            texts.set(2, "");
            texts.set(3, "");
            texts.set(4, "");
        }
        return Part.read(id, kind, "", fedBy, "", "", texts).part();
    }

    private static String text(Field field, Random random) {
        if (field instanceof ChoiceField choice) {
            return choice.options().get(random.nextInt(choice.options().size())).key();
        }
        QuantityField quantity = (QuantityField) field;
        double least = quantity.limits().get(0).least().value();
        double greatest = quantity.limits().get(0).greatest().value();
        double share = switch (random.nextInt(4)) {
            case 0 -> 0;
            case 1 -> 1;
            default -> Math.pow(random.nextDouble(), 4);
        };
        String number = String.format(java.util.Locale.ROOT, "%.4f", least + share * (greatest - least));
        return number + " " + quantity.units().get(0).symbol();
    }
}
