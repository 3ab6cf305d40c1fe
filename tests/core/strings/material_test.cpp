// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strings/material.h"

#include <gtest/gtest.h>

using rw::Material;
using rw::stretchAt55;

namespace {

constexpr Material kAll[] = {Material::NaturalGut, Material::Nylon, Material::Multifilament,
                             Material::Polyester, Material::Aramid};

TEST(Material, EveryNameReadsBack) {
    for (const Material material : kAll) {
        EXPECT_EQ(rw::materialFromText(rw::materialText(material)), material);
    }
    EXPECT_EQ(rw::materialText(Material::NaturalGut), "natural gut");
    EXPECT_EQ(rw::materialFromText("rope"), std::nullopt);
}

// One stringer's bench measurements at 55 lbf, published 2014.
TEST(Material, StretchAsMeasured) {
    EXPECT_EQ(stretchAt55(Material::NaturalGut).middle(), 6.5);
    EXPECT_EQ(stretchAt55(Material::Nylon).middle(), 9.5);
    EXPECT_EQ(stretchAt55(Material::Multifilament).middle(), 11);
    EXPECT_EQ(stretchAt55(Material::Polyester).middle(), 3.5);
    EXPECT_EQ(stretchAt55(Material::Aramid).middle(), 1.5);
    EXPECT_EQ(stretchAt55(Material::Multifilament).standardDeviation(), 0.5);
    EXPECT_EQ(stretchAt55(Material::Polyester).standardDeviation(), 0.25);
}

} // namespace
