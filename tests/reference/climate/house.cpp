#include "core/climate/dilution.h"
#include "core/climate/heat.h"
#include "core/climate/pot.h"

#include "tests/support/check_table.h"
#include "tests/support/within.h"

#include <catch2/catch.hpp>

using namespace warmbench::climate;
using namespace warmbench::tests;

namespace {

Approx near(const CheckRow& row, const char* column, double part) {
    return withinPart(row.number(column), part);
}

double molarMass(const std::string& compound) {
    if (compound == "IBA") return indolebutyricAcid;
    if (compound == "KIBA") return potassiumIndolebutyrate;
    if (compound == "NAA") return naphthaleneaceticAcid;
    REQUIRE(compound == "IAA");
    return indoleaceticAcid;
}

} // namespace

TEST_CASE("C06 volumes of pots and cells (solid geometry, checked by numeric integration)") {
    for (const CheckRow& row : checkRowsWithExpected("C06_pot_volume")) {
        INFO(row.text("id"));
        const PotSize pot{row.text("shape") == "round" ? PotShape::Round : PotShape::Square,
                          10 * row.number("top_cm"), 10 * row.number("bottom_cm"),
                          10 * row.number("height_cm")};
        std::optional<double> fill;
        if (!row.absent("fill_cm")) fill = 10 * row.number("fill_cm");
        CHECK(potLitres(pot, fill) == near(row, "volume_l", 1e-10));
        CHECK(potLitres(pot, fill) * row.number("count") == near(row, "batch_l", 1e-10));
    }
}

TEST_CASE("Pots whose measured litres are printed (published by a seller of pots; formula derived)") {
    const auto litres = [](PotShape shape, double top, double base, double height) {
        return potLitres({shape, top, base, height});
    };
    CHECK(litres(PotShape::Round, 153, 135, 175) == within(2.854, 5e-4));
    CHECK(litres(PotShape::Round, 153, 135, 175) == within(2.9, 0.05));
    CHECK(litres(PotShape::Round, 198, 170, 211) == within(5.621, 5e-4));
    CHECK(litres(PotShape::Round, 198, 170, 211) == within(5.6, 0.05));
    CHECK(litres(PotShape::Round, 177.8, 177.8, 177.8) == within(4.415, 5e-4));
    CHECK(litres(PotShape::Round, 279.4, 279.4, 279.4) == within(17.13, 5e-3));
    CHECK(litres(PotShape::Square, 139.7, 139.7, 152.4) == within(2.974, 5e-4));
}

TEST_CASE("C07 heat loss through surfaces and with air (formula; 1.2 kg/m3 and 1005 J/kgK)") {
    for (const CheckRow& row : checkRowsWithExpected("C07_heat_loss")) {
        INFO(row.text("id"));
        const double inside = row.number("t_in");
        const double outside = row.number("t_out");
        const double through = heatThrough(row.number("a1"), row.number("u1"), inside, outside) +
                               heatThrough(row.number("a2"), row.number("u2"), inside, outside);
        const double withAir = heatWithAir(row.number("ach"), row.number("vol_m3"), inside, outside);
        CHECK(through == near(row, "q_cond_w", 1e-9));
        CHECK(withAir == near(row, "q_vent_w", 1e-9));
        CHECK(through + withAir == near(row, "q_total_w", 1e-9));
        const double energy = energyForHeat(through + withAir, row.number("hours"), row.number("efficiency"));
        CHECK(energy == near(row, "energy_kwh", 1e-9));
        CHECK(energy * row.number("price_per_kwh") == near(row, "cost", 1e-9));
    }
}

TEST_CASE("C08 power, duty, energy and cost of heated mats (formula)") {
    for (const CheckRow& row : checkRowsWithExpected("C08_heat_mat")) {
        INFO(row.text("id"));
        const Mat mat{row.number("area_m2"), row.number("w_per_m2"), row.number("u_bench")};
        MatLoad load = matLoad(mat, row.number("t_set"), row.number("t_air"));
        CHECK(load.wattsRated == near(row, "installed_w", 1e-9));
        if (row.absent("duty"))
            CHECK(load.holds == (row.text("can_hold") == "1"));
        else
            load.duty = row.number("duty");
        CHECK(load.duty == near(row, "duty_used", 1e-9));
        const double energy = matEnergy(load, row.number("hours"));
        CHECK(energy == near(row, "energy_kwh", 1e-9));
        CHECK(energy * row.number("price_per_kwh") == near(row, "cost", 1e-9));
    }
}

TEST_CASE("C09 dilutions, molarity and weighed solids (arithmetic; IUPAC standard atomic weights)") {
    for (const CheckRow& row : checkRowsWithExpected("C09_dilution")) {
        INFO(row.text("id"));
        const double target = row.number("target_ppm");
        const double millilitres = row.number("final_ml");
        const auto found = dilute(row.number("stock_ppm"), target, millilitres);
        CHECK(found.has_value() == (row.text("feasible") == "1"));
        if (found) {
            CHECK(found->stock == near(row, "stock_ml", 1e-9));
            CHECK(found->diluent == near(row, "diluent_ml", 1e-9));
            CHECK(found->parts() == near(row, "parts_diluent_per_stock", 1e-9));
        }
        CHECK(percentFromPpm(target) == near(row, "target_pct", 1e-9));
        CHECK(millimolar(target, molarMass(row.text("compound"))) == near(row, "target_mM", 1e-4));
        CHECK(1000 * gramsFor(target, millilitres / 1000, row.number("purity")) ==
              near(row, "solid_mg", 1e-9));
    }
}
