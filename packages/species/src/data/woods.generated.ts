// Written by `npm run tables` from data/woods.csv and the tables; a change belongs there.
import { mapleFlooringProperties, oregonWoodProperties, woodHandbook1999, woodHandbook2010, woodRuptureTable, woodStrengthTabulation } from '@scantling/rules/sources';
import { speciesList, woodDescriptions } from '../botanical-names.ts';
import type { PrintedTable } from '../citation.ts';
import { joinWood, type Wood } from '../wood.ts';

const mapleFlooringPropertiesTable: PrintedTable = { source: mapleFlooringProperties, at: "Table" };
const oregonWoodPropertiesTable: PrintedTable = { source: oregonWoodProperties, at: "Table (inch-pound)" };
const woodHandbook1999Table35: PrintedTable = { source: woodHandbook1999, at: "Table 3-5" };
const woodHandbook2010Table135: PrintedTable = { source: woodHandbook2010, at: "Table 13-5, p. 13-16" };
const woodHandbook2010Table43: PrintedTable = { source: woodHandbook2010, at: "Table 4-3, p. 4-6" };
const woodHandbook2010Table44: PrintedTable = { source: woodHandbook2010, at: "Table 4-4, p. 4-8" };
const woodHandbook2010Table53a: PrintedTable = { source: woodHandbook2010, at: "Table 5-3a" };
const woodHandbook2010Table53b: PrintedTable = { source: woodHandbook2010, at: "Table 5-3b" };
const woodRuptureTableTable: PrintedTable = { source: woodRuptureTable, at: "Table" };
const woodStrengthTabulationTable: PrintedTable = { source: woodStrengthTabulation, at: "Table" };

const erratum1 = "The Maple Flooring Manufacturers Association gives a modulus of elasticity of 1.65 million psi green, where the Wood Handbook gives 10 700 MPa, 1.55 million psi.";
const erratum2 = "The Maple Flooring Manufacturers Association gives a modulus of elasticity of 1.88 million psi at 12 %, where the Wood Handbook gives 1.83 million psi, 12 600 MPa.";
const erratum3 = "The table gives a tangential shrinkage of 7.0 %, where the Wood Handbook, Table 4-3, prints 7.5 %.";
const erratum4 = "The table gives a tangential shrinkage of 7.5 %, where the Wood Handbook, Table 4-3, prints 7.4 %.";
const erratum5 = "The table gives species that it groups one coefficient: green with white ash, sweet with yellow birch, cedar with winged elm, black with sugar maple, pond with loblolly pine. It lies up to 15 % from the species' own shrinkage.";
const erratum6 = "The coefficients do not follow from black oak's own shrinkage: 11.1 % tangential gives about 0.0040. They equal the row of California black oak.";
const erratum7 = "The coefficients follow from a fibre saturation point of 22 %, where the other rows follow from 30 %.";
const erratum8 = "The coefficients do not follow from this wood's shrinkage in Table 4-4: that gives up to two fifths less, for some woods up to a fourth more. Which of the two is nearer is not known.";
const erratum9 = "A table of the Oregon Wood Innovation Center gives 7.0 % tangential.";
const erratum10 = "A table of the Oregon Wood Innovation Center gives 7.5 % tangential.";
const erratum11 = "The page heads its specific gravity ovendry; the figures equal those of the Wood Handbook at 12 %.";

/** Red alder. */
export const redAlder: Wood = /* @__PURE__ */ joinWood({
  id: "red-alder",
  commonName: "red alder",
  botanicalName: { name: "Alnus rubra", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["western alder","Oregon alder"],
  printedAs: ["Alder, red"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00151, tangentialPerPct: 0.00256, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.4, tangentialPct: 7.3, volumetricPct: 12.6, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.41, modulusOfRupturePsi: 9800, modulusOfElasticityMillionPsi: 1.38, confirmed: "memory", tier: "memory" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.41, modulusOfElasticityMillionPsi: 1.38, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Apple. */
export const apple: Wood = /* @__PURE__ */ joinWood({
  id: "apple",
  commonName: "apple",
  botanicalName: { name: "Malus spp.", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Apple"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00205, tangentialPerPct: 0.00376, confirmed: "text", tier: "publication" },
  ],
});

/** Black ash. */
export const blackAsh: Wood = /* @__PURE__ */ joinWood({
  id: "black-ash",
  commonName: "black ash",
  botanicalName: { name: "Fraxinus nigra", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["brown ash"],
  printedAs: ["Ash, black"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00172, tangentialPerPct: 0.00274, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 5, tangentialPct: 7.8, volumetricPct: 15.2, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 87, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.49, modulusOfElasticityMillionPsi: 1.6, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Blue ash. */
export const blueAsh: Wood = /* @__PURE__ */ joinWood({
  id: "blue-ash",
  commonName: "blue ash",
  botanicalName: { name: "Fraxinus quadrangulata", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Ash, blue"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 3.9, tangentialPct: 6.5, volumetricPct: 11.7, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 95, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.58, modulusOfElasticityMillionPsi: 1.4, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Green ash. */
export const greenAsh: Wood = /* @__PURE__ */ joinWood({
  id: "green-ash",
  commonName: "green ash",
  botanicalName: { name: "Fraxinus pennsylvanica", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Ash, green"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00169, tangentialPerPct: 0.00274, confirmed: "text", tier: "publication", errata: { radialPerPct: erratum5, tangentialPerPct: erratum5 } },
    { table: woodHandbook2010Table43, radialPct: 4.6, tangentialPct: 7.1, volumetricPct: 12.5, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 97, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.56, modulusOfElasticityMillionPsi: 1.66, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Oregon ash. */
export const oregonAsh: Wood = /* @__PURE__ */ joinWood({
  id: "oregon-ash",
  commonName: "Oregon ash",
  botanicalName: { name: "Fraxinus latifolia", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Ash, Oregon"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00141, tangentialPerPct: 0.00285, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.1, tangentialPct: 8.1, volumetricPct: 13.2, confirmed: "text", tier: "publication" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.55, modulusOfElasticityMillionPsi: 1.36, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Pumpkin ash. */
export const pumpkinAsh: Wood = /* @__PURE__ */ joinWood({
  id: "pumpkin-ash",
  commonName: "pumpkin ash",
  botanicalName: { name: "Fraxinus profunda", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Ash, pumpkin"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00126, tangentialPerPct: 0.00219, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 3.7, tangentialPct: 6.3, volumetricPct: 12, confirmed: "text", tier: "publication" },
  ],
});

/** White ash. */
export const whiteAsh: Wood = /* @__PURE__ */ joinWood({
  id: "white-ash",
  commonName: "white ash",
  botanicalName: { name: "Fraxinus americana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["American ash","American white ash"],
  printedAs: ["Ash, white"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00169, tangentialPerPct: 0.00274, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.9, tangentialPct: 7.8, volumetricPct: 13.3, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.6, modulusOfRupturePsi: 15000, modulusOfElasticityMillionPsi: 1.74, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 103, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.6, modulusOfElasticityMillionPsi: 1.74, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Bigtooth aspen. */
export const bigtoothAspen: Wood = /* @__PURE__ */ joinWood({
  id: "bigtooth-aspen",
  commonName: "bigtooth aspen",
  botanicalName: { name: "Populus grandidentata", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["largetooth aspen","popple"],
  printedAs: ["Aspen, bigtooth"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 3.3, tangentialPct: 7.9, volumetricPct: 11.8, confirmed: "text", tier: "publication" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.39, modulusOfElasticityMillionPsi: 1.43, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Quaking aspen. */
export const quakingAspen: Wood = /* @__PURE__ */ joinWood({
  id: "quaking-aspen",
  commonName: "quaking aspen",
  botanicalName: { name: "Populus tremuloides", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["trembling aspen","popple"],
  printedAs: ["Aspen, quaking"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00119, tangentialPerPct: 0.00234, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 3.5, tangentialPct: 6.7, volumetricPct: 11.5, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.38, modulusOfRupturePsi: 8400, modulusOfElasticityMillionPsi: 1.18, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 58, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.38, modulusOfElasticityMillionPsi: 1.18, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** American basswood. */
export const americanBasswood: Wood = /* @__PURE__ */ joinWood({
  id: "american-basswood",
  commonName: "American basswood",
  botanicalName: { name: "Tilia americana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["linden","American linden"],
  printedAs: ["Basswood, American","Basswood"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0023, tangentialPerPct: 0.0033, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 6.6, tangentialPct: 9.3, volumetricPct: 15.8, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.37, modulusOfRupturePsi: 8700, modulusOfElasticityMillionPsi: 1.46, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 60, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.37, modulusOfElasticityMillionPsi: 1.46, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** American beech. */
export const americanBeech: Wood = /* @__PURE__ */ joinWood({
  id: "american-beech",
  commonName: "American beech",
  botanicalName: { name: "Fagus grandifolia", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Beech, American"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0019, tangentialPerPct: 0.00431, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 5.5, tangentialPct: 11.9, volumetricPct: 17.2, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.64, modulusOfRupturePsi: 14900, modulusOfElasticityMillionPsi: 1.72, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 103, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.64, modulusOfElasticityMillionPsi: 1.72, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Alaska paper birch. */
export const alaskaPaperBirch: Wood = /* @__PURE__ */ joinWood({
  id: "alaska-paper-birch",
  commonName: "Alaska paper birch",
  botanicalName: null,
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Birch, Alaska paper"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 6.5, tangentialPct: 9.9, volumetricPct: 16.7, confirmed: "text", tier: "publication" },
  ],
});

/** Gray birch. */
export const grayBirch: Wood = /* @__PURE__ */ joinWood({
  id: "gray-birch",
  commonName: "gray birch",
  botanicalName: { name: "Betula populifolia", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Birch, gray"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 5.2, volumetricPct: 14.7, confirmed: "text", tier: "publication" },
  ],
});

/** Paper birch. */
export const paperBirch: Wood = /* @__PURE__ */ joinWood({
  id: "paper-birch",
  commonName: "paper birch",
  botanicalName: { name: "Betula papyrifera", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["white birch","canoe birch"],
  printedAs: ["Birch, paper"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00219, tangentialPerPct: 0.00304, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 6.3, tangentialPct: 8.6, volumetricPct: 16.2, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 85, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.55, modulusOfElasticityMillionPsi: 1.59, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** River birch. */
export const riverBirch: Wood = /* @__PURE__ */ joinWood({
  id: "river-birch",
  commonName: "river birch",
  botanicalName: { name: "Betula nigra", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Birch, river"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00162, tangentialPerPct: 0.00327, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.7, tangentialPct: 9.2, volumetricPct: 13.5, confirmed: "text", tier: "publication" },
  ],
});

/** Sweet birch. */
export const sweetBirch: Wood = /* @__PURE__ */ joinWood({
  id: "sweet-birch",
  commonName: "sweet birch",
  botanicalName: { name: "Betula lenta", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["black birch","cherry birch"],
  printedAs: ["Birch, sweet"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00256, tangentialPerPct: 0.00338, confirmed: "text", tier: "publication", errata: { radialPerPct: erratum5, tangentialPerPct: erratum5 } },
    { table: woodHandbook2010Table43, radialPct: 6.5, tangentialPct: 9, volumetricPct: 15.6, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 117, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.65, modulusOfElasticityMillionPsi: 2.17, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Yellow birch. */
export const yellowBirch: Wood = /* @__PURE__ */ joinWood({
  id: "yellow-birch",
  commonName: "yellow birch",
  botanicalName: { name: "Betula alleghaniensis", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Birch, yellow"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00256, tangentialPerPct: 0.00338, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 7.3, tangentialPct: 9.5, volumetricPct: 16.8, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.62, modulusOfRupturePsi: 16600, modulusOfElasticityMillionPsi: 2.01, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 114, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.62, modulusOfElasticityMillionPsi: 2.01, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Yellow buckeye. */
export const yellowBuckeye: Wood = /* @__PURE__ */ joinWood({
  id: "yellow-buckeye",
  commonName: "yellow buckeye",
  botanicalName: { name: "Aesculus flava", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["sweet buckeye"],
  printedAs: ["Buckeye, yellow"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00123, tangentialPerPct: 0.00285, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 3.6, tangentialPct: 8.1, volumetricPct: 12.5, confirmed: "text", tier: "publication" },
  ],
});

/** Butternut. */
export const butternut: Wood = /* @__PURE__ */ joinWood({
  id: "butternut",
  commonName: "butternut",
  botanicalName: { name: "Juglans cinerea", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["white walnut"],
  printedAs: ["Butternut"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00116, tangentialPerPct: 0.00223, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 3.4, tangentialPct: 6.4, volumetricPct: 10.6, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.38, modulusOfRupturePsi: 8100, modulusOfElasticityMillionPsi: 1.18, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 56, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.38, modulusOfElasticityMillionPsi: 1.18, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Northern catalpa. */
export const northernCatalpa: Wood = /* @__PURE__ */ joinWood({
  id: "northern-catalpa",
  commonName: "northern catalpa",
  botanicalName: { name: "Catalpa speciosa", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["western catalpa","hardy catalpa"],
  printedAs: ["Catalpa, northern"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00085, tangentialPerPct: 0.00169, confirmed: "text", tier: "publication" },
  ],
});

/** Black cherry. */
export const blackCherry: Wood = /* @__PURE__ */ joinWood({
  id: "black-cherry",
  commonName: "black cherry",
  botanicalName: { name: "Prunus serotina", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["cherry","wild cherry","American cherry"],
  printedAs: ["Cherry, black"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00126, tangentialPerPct: 0.00248, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 3.7, tangentialPct: 7.1, volumetricPct: 11.5, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.5, modulusOfRupturePsi: 12300, modulusOfElasticityMillionPsi: 1.49, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 85, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.5, modulusOfElasticityMillionPsi: 1.49, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** American chestnut. */
export const americanChestnut: Wood = /* @__PURE__ */ joinWood({
  id: "american-chestnut",
  commonName: "American chestnut",
  botanicalName: { name: "Castanea dentata", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["chestnut"],
  printedAs: ["Chestnut, American"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00116, tangentialPerPct: 0.00234, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 3.4, tangentialPct: 6.7, volumetricPct: 11.6, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 59, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.43, modulusOfElasticityMillionPsi: 1.23, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Balsam poplar. */
export const balsamPoplar: Wood = /* @__PURE__ */ joinWood({
  id: "balsam-poplar",
  commonName: "balsam poplar",
  botanicalName: { name: "Populus balsamifera", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Cottonwood, balsam poplar"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 3, tangentialPct: 7.1, volumetricPct: 10.5, confirmed: "text", tier: "publication" },
  ],
});

/** Black cottonwood. */
export const blackCottonwood: Wood = /* @__PURE__ */ joinWood({
  id: "black-cottonwood",
  commonName: "black cottonwood",
  botanicalName: { name: "Populus trichocarpa", table: woodDescriptions, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Cottonwood, black"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00123, tangentialPerPct: 0.00304, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 3.6, tangentialPct: 8.6, volumetricPct: 12.4, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 59, confirmed: "text", tier: "reprint" },
  ],
});

/** Eastern cottonwood. */
export const easternCottonwood: Wood = /* @__PURE__ */ joinWood({
  id: "eastern-cottonwood",
  commonName: "eastern cottonwood",
  botanicalName: { name: "Populus deltoides", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Cottonwood, eastern"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00133, tangentialPerPct: 0.00327, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 3.9, tangentialPct: 9.2, volumetricPct: 13.9, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.4, modulusOfRupturePsi: 8500, modulusOfElasticityMillionPsi: 1.37, confirmed: "memory", tier: "memory" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.4, modulusOfElasticityMillionPsi: 1.37, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** American elm. */
export const americanElm: Wood = /* @__PURE__ */ joinWood({
  id: "american-elm",
  commonName: "American elm",
  botanicalName: { name: "Ulmus americana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["white elm","soft elm","gray elm"],
  printedAs: ["Elm, American"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00144, tangentialPerPct: 0.00338, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.2, tangentialPct: 9.5, volumetricPct: 14.6, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.5, modulusOfRupturePsi: 11800, modulusOfElasticityMillionPsi: 1.34, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 81, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.5, modulusOfElasticityMillionPsi: 1.34, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Cedar elm. */
export const cedarElm: Wood = /* @__PURE__ */ joinWood({
  id: "cedar-elm",
  commonName: "cedar elm",
  botanicalName: { name: "Ulmus crassifolia", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["hard elm"],
  printedAs: ["Elm, cedar"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00183, tangentialPerPct: 0.00419, confirmed: "text", tier: "publication", errata: { radialPerPct: erratum5, tangentialPerPct: erratum5 } },
    { table: woodHandbook2010Table43, radialPct: 4.7, tangentialPct: 10.2, volumetricPct: 15.4, confirmed: "text", tier: "publication" },
  ],
});

/** Rock elm. */
export const rockElm: Wood = /* @__PURE__ */ joinWood({
  id: "rock-elm",
  commonName: "rock elm",
  botanicalName: { name: "Ulmus thomasii", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["cork elm","hard elm"],
  printedAs: ["Elm, rock"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00165, tangentialPerPct: 0.00285, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.8, tangentialPct: 8.1, volumetricPct: 14.9, confirmed: "text", tier: "publication" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.63, modulusOfElasticityMillionPsi: 1.54, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Slippery elm. */
export const slipperyElm: Wood = /* @__PURE__ */ joinWood({
  id: "slippery-elm",
  commonName: "slippery elm",
  botanicalName: { name: "Ulmus rubra", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["red elm","soft elm"],
  printedAs: ["Elm, slippery"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00169, tangentialPerPct: 0.00315, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.9, tangentialPct: 8.9, volumetricPct: 13.8, confirmed: "text", tier: "publication" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.53, modulusOfElasticityMillionPsi: 1.49, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Winged elm. */
export const wingedElm: Wood = /* @__PURE__ */ joinWood({
  id: "winged-elm",
  commonName: "winged elm",
  botanicalName: { name: "Ulmus alata", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["hard elm"],
  printedAs: ["Elm, winged"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00183, tangentialPerPct: 0.00419, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 5.3, tangentialPct: 11.6, volumetricPct: 17.7, confirmed: "text", tier: "publication" },
  ],
});

/** Hackberry. */
export const hackberry: Wood = /* @__PURE__ */ joinWood({
  id: "hackberry",
  commonName: "hackberry",
  botanicalName: { name: "Celtis occidentalis", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Hackberry"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00165, tangentialPerPct: 0.00315, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.8, tangentialPct: 8.9, volumetricPct: 13.8, confirmed: "text", tier: "publication" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.53, modulusOfElasticityMillionPsi: 1.19, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** True hickory. */
export const trueHickory: Wood = /* @__PURE__ */ joinWood({
  id: "true-hickory",
  commonName: "true hickory",
  botanicalName: { name: "Carya spp.", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Hickory, true"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00259, tangentialPerPct: 0.00411, confirmed: "memory", tier: "memory" },
  ],
});

/** Mockernut hickory. */
export const mockernutHickory: Wood = /* @__PURE__ */ joinWood({
  id: "mockernut-hickory",
  commonName: "mockernut hickory",
  botanicalName: { name: "Carya tomentosa", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Hickory, true, mockernut","Hickory, mockernut"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 7.7, tangentialPct: 11, volumetricPct: 17.8, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 132, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.72, modulusOfElasticityMillionPsi: 2.22, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Pecan. */
export const pecan: Wood = /* @__PURE__ */ joinWood({
  id: "pecan",
  commonName: "pecan",
  botanicalName: { name: "Carya illinoinensis", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Hickory, pecan"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00169, tangentialPerPct: 0.00315, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.9, tangentialPct: 8.9, volumetricPct: 13.6, confirmed: "text", tier: "publication" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.66, modulusOfElasticityMillionPsi: 1.73, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Pignut hickory. */
export const pignutHickory: Wood = /* @__PURE__ */ joinWood({
  id: "pignut-hickory",
  commonName: "pignut hickory",
  botanicalName: { name: "Carya glabra", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Hickory, true, pignut","Hickory, pignut"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 7.2, tangentialPct: 11.5, volumetricPct: 17.9, confirmed: "text", tier: "publication" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.75, modulusOfElasticityMillionPsi: 2.26, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Shagbark hickory. */
export const shagbarkHickory: Wood = /* @__PURE__ */ joinWood({
  id: "shagbark-hickory",
  commonName: "shagbark hickory",
  botanicalName: { name: "Carya ovata", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Hickory, true, shagbark","Hickory, shagbark"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 7, tangentialPct: 10.5, volumetricPct: 16.7, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.72, modulusOfRupturePsi: 20200, modulusOfElasticityMillionPsi: 2.16, confirmed: "memory", tier: "memory" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.72, modulusOfElasticityMillionPsi: 2.16, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Shellbark hickory. */
export const shellbarkHickory: Wood = /* @__PURE__ */ joinWood({
  id: "shellbark-hickory",
  commonName: "shellbark hickory",
  botanicalName: { name: "Carya laciniosa", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Hickory, true, shellbark","Hickory, shellbark"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 7.6, tangentialPct: 12.6, volumetricPct: 19.2, confirmed: "memory", tier: "memory" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.69, modulusOfElasticityMillionPsi: 1.89, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** American holly. */
export const americanHolly: Wood = /* @__PURE__ */ joinWood({
  id: "american-holly",
  commonName: "American holly",
  botanicalName: { name: "Ilex opaca", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Holly, American"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00165, tangentialPerPct: 0.00353, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.8, tangentialPct: 9.9, volumetricPct: 16.9, confirmed: "memory", tier: "memory" },
  ],
});

/** Honeylocust. */
export const honeylocust: Wood = /* @__PURE__ */ joinWood({
  id: "honeylocust",
  commonName: "honeylocust",
  botanicalName: { name: "Gleditsia triacanthos", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["honey locust","locust"],
  printedAs: ["Honeylocust"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00144, tangentialPerPct: 0.0023, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.2, tangentialPct: 6.6, volumetricPct: 10.8, confirmed: "memory", tier: "memory" },
  ],
});

/** Black locust. */
export const blackLocust: Wood = /* @__PURE__ */ joinWood({
  id: "black-locust",
  commonName: "black locust",
  botanicalName: { name: "Robinia pseudoacacia", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["yellow locust","locust","robinia"],
  printedAs: ["Locust, black"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00158, tangentialPerPct: 0.00252, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.6, tangentialPct: 7.2, volumetricPct: 10.2, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 134, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.69, modulusOfElasticityMillionPsi: 2.05, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Pacific madrone. */
export const pacificMadrone: Wood = /* @__PURE__ */ joinWood({
  id: "pacific-madrone",
  commonName: "Pacific madrone",
  botanicalName: { name: "Arbutus menziesii", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["madrona","madroño"],
  printedAs: ["Madrone, Pacific"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00194, tangentialPerPct: 0.00451, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 5.6, tangentialPct: 12.4, volumetricPct: 18.1, confirmed: "memory", tier: "memory" },
  ],
});

/** Cucumbertree. */
export const cucumbertree: Wood = /* @__PURE__ */ joinWood({
  id: "cucumbertree",
  commonName: "cucumbertree",
  botanicalName: { name: "Magnolia acuminata", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["cucumber tree","cucumber magnolia"],
  printedAs: ["Magnolia, cucumbertree"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0018, tangentialPerPct: 0.00312, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 5.2, tangentialPct: 8.8, volumetricPct: 13.6, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 85, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.48, modulusOfElasticityMillionPsi: 1.82, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Southern magnolia. */
export const southernMagnolia: Wood = /* @__PURE__ */ joinWood({
  id: "southern-magnolia",
  commonName: "southern magnolia",
  botanicalName: { name: "Magnolia grandiflora", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["evergreen magnolia"],
  printedAs: ["Magnolia, southern"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00187, tangentialPerPct: 0.0023, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 5.4, tangentialPct: 6.6, volumetricPct: 12.3, confirmed: "memory", tier: "memory" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.5, modulusOfElasticityMillionPsi: 1.4, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Sweetbay. */
export const sweetbay: Wood = /* @__PURE__ */ joinWood({
  id: "sweetbay",
  commonName: "sweetbay",
  botanicalName: { name: "Magnolia virginiana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["sweet bay","sweetbay magnolia"],
  printedAs: ["Magnolia, sweetbay"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00162, tangentialPerPct: 0.00293, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.7, tangentialPct: 8.3, volumetricPct: 12.9, confirmed: "memory", tier: "memory" },
  ],
});

/** Bigleaf maple. */
export const bigleafMaple: Wood = /* @__PURE__ */ joinWood({
  id: "bigleaf-maple",
  commonName: "bigleaf maple",
  botanicalName: { name: "Acer macrophyllum", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["soft maple","Oregon maple","Pacific maple"],
  printedAs: ["Maple, bigleaf"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00126, tangentialPerPct: 0.00248, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 3.7, tangentialPct: 7.1, volumetricPct: 11.6, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 74, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.48, modulusOfElasticityMillionPsi: 1.45, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Black maple. */
export const blackMaple: Wood = /* @__PURE__ */ joinWood({
  id: "black-maple",
  commonName: "black maple",
  botanicalName: { name: "Acer nigrum", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["black sugar maple"],
  printedAs: ["Maple, black"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00165, tangentialPerPct: 0.00353, confirmed: "text", tier: "publication", errata: { radialPerPct: erratum5, tangentialPerPct: erratum5 } },
    { table: woodHandbook2010Table43, radialPct: 4.8, tangentialPct: 9.3, volumetricPct: 14, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 92, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.57, modulusOfElasticityMillionPsi: 1.62, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Red maple. */
export const redMaple: Wood = /* @__PURE__ */ joinWood({
  id: "red-maple",
  commonName: "red maple",
  botanicalName: { name: "Acer rubrum", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["soft maple"],
  printedAs: ["Maple, red"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00137, tangentialPerPct: 0.00289, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4, tangentialPct: 8.2, volumetricPct: 12.6, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.54, modulusOfRupturePsi: 13400, modulusOfElasticityMillionPsi: 1.64, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 92, confirmed: "text", tier: "reprint" },
    { table: woodStrengthTabulationTable, moisture: "12%", specificGravityRatio: 0.54, modulusOfElasticityMillionPsi: 1.64, confirmed: "text", tier: "reprint", errata: { specificGravityRatio: erratum11 } },
  ],
});

/** Silver maple. */
export const silverMaple: Wood = /* @__PURE__ */ joinWood({
  id: "silver-maple",
  commonName: "silver maple",
  botanicalName: { name: "Acer saccharinum", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["soft maple"],
  printedAs: ["Maple, silver"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00102, tangentialPerPct: 0.00252, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 3, tangentialPct: 7.2, volumetricPct: 12, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.47, modulusOfRupturePsi: 8900, modulusOfElasticityMillionPsi: 1.14, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 61, confirmed: "text", tier: "reprint" },
  ],
});

/** Striped maple. */
export const stripedMaple: Wood = /* @__PURE__ */ joinWood({
  id: "striped-maple",
  commonName: "striped maple",
  botanicalName: { name: "Acer pensylvanicum", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["moosewood"],
  printedAs: ["Maple, striped"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 3.2, tangentialPct: 8.6, volumetricPct: 12.3, confirmed: "memory", tier: "memory" },
  ],
});

/** Sugar maple. */
export const sugarMaple: Wood = /* @__PURE__ */ joinWood({
  id: "sugar-maple",
  commonName: "sugar maple",
  botanicalName: { name: "Acer saccharum", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["hard maple","rock maple","hard rock maple"],
  printedAs: ["Maple, sugar"],
  rows: [
    { table: mapleFlooringPropertiesTable, moisture: "green", specificGravityRatio: 0.56, modulusOfRupturePsi: 9400, modulusOfElasticityMillionPsi: 1.65, sideHardnessLbf: 970, confirmed: "text", tier: "reprint", errata: { modulusOfElasticityMillionPsi: erratum1 } },
    { table: mapleFlooringPropertiesTable, moisture: "12%", specificGravityRatio: 0.63, modulusOfRupturePsi: 15800, modulusOfElasticityMillionPsi: 1.88, sideHardnessLbf: 1450, confirmed: "text", tier: "reprint", errata: { modulusOfElasticityMillionPsi: erratum2 } },
    { table: woodHandbook2010Table135, radialPerPct: 0.00165, tangentialPerPct: 0.00353, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.8, tangentialPct: 9.9, volumetricPct: 14.7, confirmed: "text", tier: "reprint" },
    { table: woodHandbook2010Table53a, moisture: "green", specificGravityRatio: 0.56, modulusOfRuptureKPa: 65000, modulusOfElasticityMPa: 10700, sideHardnessN: 4300, confirmed: "text", tier: "reprint", errata: { modulusOfElasticityMPa: erratum1 } },
    { table: woodHandbook2010Table53a, moisture: "12%", specificGravityRatio: 0.63, modulusOfRuptureKPa: 109000, modulusOfElasticityMPa: 12600, sideHardnessN: 6400, confirmed: "text", tier: "reprint", errata: { modulusOfElasticityMPa: erratum2 } },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.63, modulusOfRupturePsi: 15800, modulusOfElasticityMillionPsi: 1.83, confirmed: "memory", tier: "memory", errata: { modulusOfElasticityMillionPsi: erratum2 } },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 109, confirmed: "text", tier: "reprint" },
  ],
});

/** Commercial red oak. */
export const commercialRedOak: Wood = /* @__PURE__ */ joinWood({
  id: "commercial-red-oak",
  commonName: "commercial red oak",
  botanicalName: { name: "Quercus spp.", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["red oak"],
  printedAs: ["Red Oak, commercial"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00158, tangentialPerPct: 0.00369, confirmed: "text", tier: "publication" },
  ],
});

/** Commercial white oak. */
export const commercialWhiteOak: Wood = /* @__PURE__ */ joinWood({
  id: "commercial-white-oak",
  commonName: "commercial white oak",
  botanicalName: { name: "Quercus spp.", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["white oak"],
  printedAs: ["White Oak, commercial"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0018, tangentialPerPct: 0.00365, confirmed: "text", tier: "publication" },
  ],
});

/** Black oak. */
export const blackOak: Wood = /* @__PURE__ */ joinWood({
  id: "black-oak",
  commonName: "black oak",
  botanicalName: { name: "Quercus velutina", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Oak, red, black","Oak, black"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00123, tangentialPerPct: 0.0023, confirmed: "text", tier: "publication", errata: { radialPerPct: erratum6, tangentialPerPct: erratum6 } },
    { table: woodHandbook2010Table43, radialPct: 4.4, tangentialPct: 11.1, volumetricPct: 15.1, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 96, confirmed: "text", tier: "reprint" },
  ],
});

/** Bur oak. */
export const burOak: Wood = /* @__PURE__ */ joinWood({
  id: "bur-oak",
  commonName: "bur oak",
  botanicalName: { name: "Quercus macrocarpa", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["burr oak","mossycup oak"],
  printedAs: ["Oak, white, bur","Oak, bur"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 4.4, tangentialPct: 8.8, volumetricPct: 12.7, confirmed: "text", tier: "reprint" },
    { table: woodHandbook2010Table53a, moisture: "green", specificGravityRatio: 0.58, modulusOfRuptureKPa: 50000, modulusOfElasticityMPa: 6100, sideHardnessN: 4900, confirmed: "text", tier: "reprint" },
    { table: woodHandbook2010Table53a, moisture: "12%", specificGravityRatio: 0.64, modulusOfRuptureKPa: 71000, modulusOfElasticityMPa: 7100, sideHardnessN: 6100, confirmed: "text", tier: "reprint" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 71, confirmed: "text", tier: "reprint" },
  ],
});

/** California black oak. */
export const californiaBlackOak: Wood = /* @__PURE__ */ joinWood({
  id: "california-black-oak",
  commonName: "California black oak",
  botanicalName: { name: "Quercus kelloggii", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["Kellogg oak"],
  printedAs: ["Red oak, California"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00123, tangentialPerPct: 0.0023, confirmed: "text", tier: "publication" },
  ],
});

/** Chestnut oak. */
export const chestnutOak: Wood = /* @__PURE__ */ joinWood({
  id: "chestnut-oak",
  commonName: "chestnut oak",
  botanicalName: { name: "Quercus montana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["rock oak"],
  printedAs: ["Oak, white, chestnut","Oak, chestnut"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 5.3, tangentialPct: 10.8, volumetricPct: 16.4, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 92, confirmed: "text", tier: "reprint" },
  ],
});

/** Laurel oak. */
export const laurelOak: Wood = /* @__PURE__ */ joinWood({
  id: "laurel-oak",
  commonName: "laurel oak",
  botanicalName: { name: "Quercus laurifolia", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Oak, red, laurel","Oak, laurel","Red oak: water, laurel, willow"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00151, tangentialPerPct: 0.0035, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4, tangentialPct: 9.9, volumetricPct: 19, confirmed: "text", tier: "reprint" },
    { table: woodHandbook2010Table53a, moisture: "green", specificGravityRatio: 0.56, modulusOfRuptureKPa: 54000, modulusOfElasticityMPa: 9600, sideHardnessN: 4400, confirmed: "text", tier: "reprint" },
    { table: woodHandbook2010Table53a, moisture: "12%", specificGravityRatio: 0.63, modulusOfRuptureKPa: 87000, modulusOfElasticityMPa: 11700, sideHardnessN: 5400, confirmed: "text", tier: "reprint" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 87, confirmed: "text", tier: "reprint" },
  ],
});

/** Live oak. */
export const liveOak: Wood = /* @__PURE__ */ joinWood({
  id: "live-oak",
  commonName: "live oak",
  botanicalName: { name: "Quercus virginiana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["southern live oak"],
  printedAs: ["Oak, white, live","White oak, live","Oak, live"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0023, tangentialPerPct: 0.00338, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 6.6, tangentialPct: 9.5, volumetricPct: 14.7, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 127, confirmed: "text", tier: "reprint" },
  ],
});

/** Northern red oak. */
export const northernRedOak: Wood = /* @__PURE__ */ joinWood({
  id: "northern-red-oak",
  commonName: "northern red oak",
  botanicalName: { name: "Quercus rubra", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["red oak"],
  printedAs: ["Oak, red, northern red","Oak, northern red"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 4, tangentialPct: 8.6, volumetricPct: 13.7, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.63, modulusOfRupturePsi: 14300, modulusOfElasticityMillionPsi: 1.82, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 99, confirmed: "text", tier: "reprint" },
  ],
});

/** Oregon white oak. */
export const oregonWhiteOak: Wood = /* @__PURE__ */ joinWood({
  id: "oregon-white-oak",
  commonName: "Oregon white oak",
  botanicalName: { name: "Quercus garryana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["Garry oak"],
  printedAs: ["White oak, Oregon white"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00144, tangentialPerPct: 0.00327, confirmed: "text", tier: "publication" },
  ],
});

/** Overcup oak. */
export const overcupOak: Wood = /* @__PURE__ */ joinWood({
  id: "overcup-oak",
  commonName: "overcup oak",
  botanicalName: { name: "Quercus lyrata", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Oak, white, overcup","White oak, overcup"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00183, tangentialPerPct: 0.00462, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 5.3, tangentialPct: 12.7, volumetricPct: 16, confirmed: "text", tier: "publication" },
  ],
});

/** Pin oak. */
export const pinOak: Wood = /* @__PURE__ */ joinWood({
  id: "pin-oak",
  commonName: "pin oak",
  botanicalName: { name: "Quercus palustris", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Oak, red, pin","Oak, pin"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 4.3, tangentialPct: 9.5, volumetricPct: 14.5, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 97, confirmed: "text", tier: "reprint" },
  ],
});

/** Post oak. */
export const postOak: Wood = /* @__PURE__ */ joinWood({
  id: "post-oak",
  commonName: "post oak",
  botanicalName: { name: "Quercus stellata", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Oak, white, post","Oak, post"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 5.4, tangentialPct: 9.8, volumetricPct: 16.2, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 91, confirmed: "text", tier: "reprint" },
  ],
});

/** Scarlet oak. */
export const scarletOak: Wood = /* @__PURE__ */ joinWood({
  id: "scarlet-oak",
  commonName: "scarlet oak",
  botanicalName: { name: "Quercus coccinea", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Oak, red, scarlet","Oak, scarlet"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 4.4, tangentialPct: 10.8, volumetricPct: 14.7, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 120, confirmed: "text", tier: "reprint" },
  ],
});

/** Southern red oak. */
export const southernRedOak: Wood = /* @__PURE__ */ joinWood({
  id: "southern-red-oak",
  commonName: "southern red oak",
  botanicalName: { name: "Quercus falcata", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Oak, red, southern red"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 4.7, tangentialPct: 11.3, volumetricPct: 16.1, confirmed: "memory", tier: "memory" },
  ],
});

/** Swamp chestnut oak. */
export const swampChestnutOak: Wood = /* @__PURE__ */ joinWood({
  id: "swamp-chestnut-oak",
  commonName: "swamp chestnut oak",
  botanicalName: { name: "Quercus michauxii", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["basket oak","cow oak"],
  printedAs: ["Oak, white, swamp chestnut"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 5.2, tangentialPct: 10.8, volumetricPct: 16.4, confirmed: "text", tier: "publication" },
  ],
});

/** Water oak. */
export const waterOak: Wood = /* @__PURE__ */ joinWood({
  id: "water-oak",
  commonName: "water oak",
  botanicalName: { name: "Quercus nigra", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Oak, red, water","Red oak: water, laurel, willow"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00151, tangentialPerPct: 0.0035, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.4, tangentialPct: 9.8, volumetricPct: 16.1, confirmed: "memory", tier: "memory" },
  ],
});

/** White oak. */
export const whiteOak: Wood = /* @__PURE__ */ joinWood({
  id: "white-oak",
  commonName: "white oak",
  botanicalName: { name: "Quercus alba", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Oak, white, white","Oak, white"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 5.6, tangentialPct: 10.5, volumetricPct: 16.3, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.68, modulusOfRupturePsi: 15200, modulusOfElasticityMillionPsi: 1.78, confirmed: "memory", tier: "memory" },
  ],
});

/** Willow oak. */
export const willowOak: Wood = /* @__PURE__ */ joinWood({
  id: "willow-oak",
  commonName: "willow oak",
  botanicalName: { name: "Quercus phellos", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Oak, red, willow","Red oak: water, laurel, willow"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00151, tangentialPerPct: 0.0035, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 5, tangentialPct: 9.6, volumetricPct: 18.9, confirmed: "memory", tier: "memory" },
  ],
});

/** Common persimmon. */
export const commonPersimmon: Wood = /* @__PURE__ */ joinWood({
  id: "common-persimmon",
  commonName: "common persimmon",
  botanicalName: { name: "Diospyros virginiana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["American persimmon"],
  printedAs: ["Persimmon, common"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00278, tangentialPerPct: 0.00403, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 7.9, tangentialPct: 11.2, volumetricPct: 19.1, confirmed: "text", tier: "publication" },
  ],
});

/** Sassafras. */
export const sassafras: Wood = /* @__PURE__ */ joinWood({
  id: "sassafras",
  commonName: "sassafras",
  botanicalName: { name: "Sassafras albidum", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Sassafras"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00137, tangentialPerPct: 0.00216, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4, tangentialPct: 6.2, volumetricPct: 10.3, confirmed: "text", tier: "publication" },
  ],
});

/** Sweetgum. */
export const sweetgum: Wood = /* @__PURE__ */ joinWood({
  id: "sweetgum",
  commonName: "sweetgum",
  botanicalName: { name: "Liquidambar styraciflua", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["sweet gum","red gum"],
  printedAs: ["Sweetgum"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00183, tangentialPerPct: 0.00365, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 5.3, tangentialPct: 10.2, volumetricPct: 15.8, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.52, modulusOfRupturePsi: 12500, modulusOfElasticityMillionPsi: 1.64, confirmed: "memory", tier: "memory" },
  ],
});

/** American sycamore. */
export const americanSycamore: Wood = /* @__PURE__ */ joinWood({
  id: "american-sycamore",
  commonName: "American sycamore",
  botanicalName: { name: "Platanus occidentalis", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["planetree","plane tree","American plane","buttonwood"],
  printedAs: ["Sycamore, American"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00172, tangentialPerPct: 0.00296, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 5, tangentialPct: 8.4, volumetricPct: 14.1, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.49, modulusOfRupturePsi: 10000, modulusOfElasticityMillionPsi: 1.42, confirmed: "memory", tier: "memory" },
  ],
});

/** Tanoak. */
export const tanoak: Wood = /* @__PURE__ */ joinWood({
  id: "tanoak",
  commonName: "tanoak",
  botanicalName: { name: "Lithocarpus densiflorus", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["tan oak","tanbark oak"],
  printedAs: ["Tanoak"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00169, tangentialPerPct: 0.00423, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.9, tangentialPct: 11.7, volumetricPct: 17.3, confirmed: "text", tier: "publication" },
  ],
});

/** Black tupelo. */
export const blackTupelo: Wood = /* @__PURE__ */ joinWood({
  id: "black-tupelo",
  commonName: "black tupelo",
  botanicalName: { name: "Nyssa sylvatica", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["blackgum","black gum","sour gum"],
  printedAs: ["Tupelo, black"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00176, tangentialPerPct: 0.00308, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 5.1, tangentialPct: 8.7, volumetricPct: 14.4, confirmed: "text", tier: "publication" },
  ],
});

/** Water tupelo. */
export const waterTupelo: Wood = /* @__PURE__ */ joinWood({
  id: "water-tupelo",
  commonName: "water tupelo",
  botanicalName: { name: "Nyssa aquatica", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["tupelo gum","cotton gum"],
  printedAs: ["Tupelo, water"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00144, tangentialPerPct: 0.00267, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 4.2, tangentialPct: 7.6, volumetricPct: 12.5, confirmed: "text", tier: "publication" },
  ],
});

/** Black walnut. */
export const blackWalnut: Wood = /* @__PURE__ */ joinWood({
  id: "black-walnut",
  commonName: "black walnut",
  botanicalName: { name: "Juglans nigra", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["walnut","American walnut","American black walnut"],
  printedAs: ["Walnut, black"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0019, tangentialPerPct: 0.00274, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table43, radialPct: 5.5, tangentialPct: 7.8, volumetricPct: 12.8, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.55, modulusOfRupturePsi: 14600, modulusOfElasticityMillionPsi: 1.68, confirmed: "memory", tier: "memory" },
  ],
});

/** Black willow. */
export const blackWillow: Wood = /* @__PURE__ */ joinWood({
  id: "black-willow",
  commonName: "black willow",
  botanicalName: { name: "Salix nigra", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Willow, black"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00112, tangentialPerPct: 0.00308, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 3.3, tangentialPct: 8.7, volumetricPct: 13.9, confirmed: "text", tier: "publication" },
  ],
});

/** Pacific willow. */
export const pacificWillow: Wood = /* @__PURE__ */ joinWood({
  id: "pacific-willow",
  commonName: "Pacific willow",
  botanicalName: { name: "Salix lasiandra", table: woodDescriptions, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["western black willow"],
  printedAs: ["Willow, Pacific"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00099, tangentialPerPct: 0.00319, confirmed: "memory", tier: "memory" },
  ],
});

/** Yellow-poplar. */
export const yellowPoplar: Wood = /* @__PURE__ */ joinWood({
  id: "yellow-poplar",
  commonName: "yellow-poplar",
  botanicalName: { name: "Liriodendron tulipifera", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "hardwood",
  origin: "domestic",
  aliases: ["tulip poplar","poplar","tuliptree","tulip tree"],
  printedAs: ["Yellow-poplar"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00158, tangentialPerPct: 0.00289, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.6, tangentialPct: 8.2, volumetricPct: 12.7, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.42, modulusOfRupturePsi: 10100, modulusOfElasticityMillionPsi: 1.58, confirmed: "memory", tier: "memory" },
  ],
});

/** Baldcypress. */
export const baldcypress: Wood = /* @__PURE__ */ joinWood({
  id: "baldcypress",
  commonName: "baldcypress",
  botanicalName: { name: "Taxodium distichum", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["bald cypress","cypress","southern cypress"],
  printedAs: ["Baldcypress"],
  rows: [
    { table: woodHandbook1999Table35, radialPct: 3.8, tangentialPct: 6.2, volumetricPct: 10.5, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table135, radialPerPct: 0.0013, tangentialPerPct: 0.00216, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.46, modulusOfRupturePsi: 10600, modulusOfElasticityMillionPsi: 1.44, confirmed: "memory", tier: "memory" },
  ],
});

/** Atlantic white cedar. */
export const atlanticWhiteCedar: Wood = /* @__PURE__ */ joinWood({
  id: "atlantic-white-cedar",
  commonName: "Atlantic white cedar",
  botanicalName: { name: "Chamaecyparis thyoides", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["southern white cedar"],
  printedAs: ["Cedar, Atlantic white"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00099, tangentialPerPct: 0.00187, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 2.9, tangentialPct: 5.4, volumetricPct: 8.8, confirmed: "text", tier: "publication" },
  ],
});

/** Eastern redcedar. */
export const easternRedcedar: Wood = /* @__PURE__ */ joinWood({
  id: "eastern-redcedar",
  commonName: "eastern redcedar",
  botanicalName: { name: "Juniperus virginiana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["aromatic cedar","aromatic red cedar","pencil cedar"],
  printedAs: ["Cedar, eastern redcedar","Cedar, eastern red"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00106, tangentialPerPct: 0.00162, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 3.1, tangentialPct: 4.7, volumetricPct: 7.8, confirmed: "text", tier: "publication" },
  ],
});

/** Incense cedar. */
export const incenseCedar: Wood = /* @__PURE__ */ joinWood({
  id: "incense-cedar",
  commonName: "incense cedar",
  botanicalName: { name: "Calocedrus decurrens", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Cedar, incense"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00112, tangentialPerPct: 0.0018, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 3.3, tangentialPct: 5.2, volumetricPct: 7.7, confirmed: "text", tier: "publication" },
  ],
});

/** Northern white cedar. */
export const northernWhiteCedar: Wood = /* @__PURE__ */ joinWood({
  id: "northern-white-cedar",
  commonName: "northern white cedar",
  botanicalName: { name: "Thuja occidentalis", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["eastern white cedar","eastern arborvitae"],
  printedAs: ["Cedar, northern white"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00101, tangentialPerPct: 0.00229, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum7, tangentialPerPct: erratum7 } },
    { table: woodHandbook2010Table43, radialPct: 2.2, tangentialPct: 4.9, volumetricPct: 7.2, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 45, confirmed: "text", tier: "reprint" },
  ],
});

/** Port-Orford cedar. */
export const portOrfordCedar: Wood = /* @__PURE__ */ joinWood({
  id: "port-orford-cedar",
  commonName: "Port-Orford cedar",
  botanicalName: { name: "Chamaecyparis lawsoniana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["Lawson cypress"],
  printedAs: ["Cedar, Port-Orford"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00158, tangentialPerPct: 0.00241, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.6, tangentialPct: 6.9, volumetricPct: 10.1, confirmed: "text", tier: "publication" },
  ],
});

/** Western redcedar. */
export const westernRedcedar: Wood = /* @__PURE__ */ joinWood({
  id: "western-redcedar",
  commonName: "western redcedar",
  botanicalName: { name: "Thuja plicata", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["canoe cedar","giant arborvitae"],
  printedAs: ["Cedar, western redcedar","Cedar, western red"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00111, tangentialPerPct: 0.00234, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum7, tangentialPerPct: erratum7 } },
    { table: woodHandbook2010Table43, radialPct: 2.4, tangentialPct: 5, volumetricPct: 6.8, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.32, modulusOfRupturePsi: 7500, modulusOfElasticityMillionPsi: 1.11, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 52, confirmed: "text", tier: "reprint" },
  ],
});

/** Yellow cedar. */
export const yellowCedar: Wood = /* @__PURE__ */ joinWood({
  id: "yellow-cedar",
  commonName: "yellow cedar",
  botanicalName: { name: "Callitropsis nootkatensis", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["Alaska cedar","Alaska yellow cedar","yellow cypress","Nootka cypress","Alaskan yellow cedar"],
  printedAs: ["Cedar, yellow"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00095, tangentialPerPct: 0.00208, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 2.8, tangentialPct: 6, volumetricPct: 9.2, confirmed: "text", tier: "publication" },
  ],
});

/** Coast Douglas-fir. */
export const coastDouglasFir: Wood = /* @__PURE__ */ joinWood({
  id: "coast-douglas-fir",
  commonName: "coast Douglas-fir",
  botanicalName: { name: "Pseudotsuga menziesii", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["Oregon pine","Douglas fir","Doug fir"],
  printedAs: ["Douglas-fir, coast","Douglas-fir, Coast-type","Douglas-fir"],
  rows: [
    { table: oregonWoodPropertiesTable, moisture: "12%", specificGravityRatio: 0.48, tangentialPct: 7.6, modulusOfRupturePsi: 12400, modulusOfElasticityMillionPsi: 1.95, sideHardnessLbf: 710, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table135, radialPerPct: 0.00165, tangentialPerPct: 0.00267, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.8, tangentialPct: 7.6, volumetricPct: 12.4, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.48, modulusOfRupturePsi: 12400, modulusOfElasticityMillionPsi: 1.95, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 85, confirmed: "text", tier: "reprint" },
  ],
});

/** Interior north Douglas-fir. */
export const interiorNorthDouglasFir: Wood = /* @__PURE__ */ joinWood({
  id: "interior-north-douglas-fir",
  commonName: "interior north Douglas-fir",
  botanicalName: { name: "Pseudotsuga menziesii", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["Douglas fir","Doug fir"],
  printedAs: ["Douglas-fir, interior north","Douglas-fir, Interior north"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0013, tangentialPerPct: 0.00241, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 3.8, tangentialPct: 6.9, volumetricPct: 10.7, confirmed: "text", tier: "publication" },
  ],
});

/** Interior west Douglas-fir. */
export const interiorWestDouglasFir: Wood = /* @__PURE__ */ joinWood({
  id: "interior-west-douglas-fir",
  commonName: "interior west Douglas-fir",
  botanicalName: { name: "Pseudotsuga menziesii", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["Douglas fir","Doug fir"],
  printedAs: ["Douglas-fir, interior west","Douglas-fir, Interior west"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00165, tangentialPerPct: 0.00263, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.8, tangentialPct: 7.5, volumetricPct: 11.8, confirmed: "text", tier: "publication" },
  ],
});

/** Balsam fir. */
export const balsamFir: Wood = /* @__PURE__ */ joinWood({
  id: "balsam-fir",
  commonName: "balsam fir",
  botanicalName: { name: "Abies balsamea", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Fir, balsam"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00099, tangentialPerPct: 0.00241, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 2.9, tangentialPct: 6.9, volumetricPct: 11.2, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.35, modulusOfRupturePsi: 9200, modulusOfElasticityMillionPsi: 1.45, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 63, confirmed: "text", tier: "reprint" },
  ],
});

/** California red fir. */
export const californiaRedFir: Wood = /* @__PURE__ */ joinWood({
  id: "california-red-fir",
  commonName: "California red fir",
  botanicalName: { name: "Abies magnifica", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["red fir"],
  printedAs: ["Fir, California red"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00155, tangentialPerPct: 0.00278, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.5, tangentialPct: 7.9, volumetricPct: 11.4, confirmed: "text", tier: "publication" },
  ],
});

/** Grand fir. */
export const grandFir: Wood = /* @__PURE__ */ joinWood({
  id: "grand-fir",
  commonName: "grand fir",
  botanicalName: { name: "Abies grandis", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["lowland white fir"],
  printedAs: ["Fir, grand","Grand fir"],
  rows: [
    { table: oregonWoodPropertiesTable, moisture: "12%", specificGravityRatio: 0.39, tangentialPct: 7, modulusOfRupturePsi: 8900, modulusOfElasticityMillionPsi: 1.57, sideHardnessLbf: 490, confirmed: "text", tier: "publication", errata: { tangentialPct: erratum3 } },
    { table: woodHandbook2010Table43, radialPct: 3.4, tangentialPct: 7.5, volumetricPct: 11, confirmed: "text", tier: "publication", errata: { tangentialPct: erratum9 } },
  ],
});

/** Noble fir. */
export const nobleFir: Wood = /* @__PURE__ */ joinWood({
  id: "noble-fir",
  commonName: "noble fir",
  botanicalName: { name: "Abies procera", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Fir, noble","Noble fir"],
  rows: [
    { table: oregonWoodPropertiesTable, moisture: "12%", specificGravityRatio: 0.39, tangentialPct: 8.3, modulusOfRupturePsi: 10700, modulusOfElasticityMillionPsi: 1.72, sideHardnessLbf: 410, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table135, radialPerPct: 0.00148, tangentialPerPct: 0.00293, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.3, tangentialPct: 8.3, volumetricPct: 12.4, confirmed: "text", tier: "publication" },
  ],
});

/** Pacific silver fir. */
export const pacificSilverFir: Wood = /* @__PURE__ */ joinWood({
  id: "pacific-silver-fir",
  commonName: "Pacific silver fir",
  botanicalName: { name: "Abies amabilis", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["amabilis fir","silver fir"],
  printedAs: ["Fir, Pacific silver","Pacific silver fir"],
  rows: [
    { table: oregonWoodPropertiesTable, moisture: "12%", specificGravityRatio: 0.43, tangentialPct: 9.2, modulusOfRupturePsi: 11000, modulusOfElasticityMillionPsi: 1.76, sideHardnessLbf: 430, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table135, radialPerPct: 0.00151, tangentialPerPct: 0.00327, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.4, tangentialPct: 9.2, volumetricPct: 13, confirmed: "text", tier: "publication" },
  ],
});

/** Subalpine fir. */
export const subalpineFir: Wood = /* @__PURE__ */ joinWood({
  id: "subalpine-fir",
  commonName: "subalpine fir",
  botanicalName: { name: "Abies lasiocarpa", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["alpine fir"],
  printedAs: ["Fir, subalpine","Subalpine fir"],
  rows: [
    { table: oregonWoodPropertiesTable, moisture: "12%", specificGravityRatio: 0.32, tangentialPct: 7.5, modulusOfRupturePsi: 8600, modulusOfElasticityMillionPsi: 1.29, sideHardnessLbf: 350, confirmed: "text", tier: "publication", errata: { tangentialPct: erratum4 } },
    { table: woodHandbook2010Table135, radialPerPct: 0.00088, tangentialPerPct: 0.00259, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 2.6, tangentialPct: 7.4, volumetricPct: 9.4, confirmed: "text", tier: "publication", errata: { tangentialPct: erratum10 } },
  ],
});

/** White fir. */
export const whiteFir: Wood = /* @__PURE__ */ joinWood({
  id: "white-fir",
  commonName: "white fir",
  botanicalName: { name: "Abies concolor", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["concolor fir"],
  printedAs: ["Fir, white"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00112, tangentialPerPct: 0.00245, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 3.3, tangentialPct: 7, volumetricPct: 9.8, confirmed: "text", tier: "publication" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 68, confirmed: "text", tier: "reprint" },
  ],
});

/** Eastern hemlock. */
export const easternHemlock: Wood = /* @__PURE__ */ joinWood({
  id: "eastern-hemlock",
  commonName: "eastern hemlock",
  botanicalName: { name: "Tsuga canadensis", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["Canada hemlock","Canadian hemlock"],
  printedAs: ["Hemlock, eastern"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00102, tangentialPerPct: 0.00237, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 3, tangentialPct: 6.8, volumetricPct: 9.7, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 61, confirmed: "text", tier: "reprint" },
  ],
});

/** Mountain hemlock. */
export const mountainHemlock: Wood = /* @__PURE__ */ joinWood({
  id: "mountain-hemlock",
  commonName: "mountain hemlock",
  botanicalName: { name: "Tsuga mertensiana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Hemlock, mountain"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 4.4, tangentialPct: 7.1, volumetricPct: 11.1, confirmed: "memory", tier: "memory" },
  ],
});

/** Western hemlock. */
export const westernHemlock: Wood = /* @__PURE__ */ joinWood({
  id: "western-hemlock",
  commonName: "western hemlock",
  botanicalName: { name: "Tsuga heterophylla", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["West Coast hemlock","Pacific hemlock"],
  printedAs: ["Hemlock, western","Western hemlock"],
  rows: [
    { table: oregonWoodPropertiesTable, moisture: "12%", specificGravityRatio: 0.45, tangentialPct: 7.8, modulusOfRupturePsi: 11300, modulusOfElasticityMillionPsi: 1.63, sideHardnessLbf: 540, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table135, radialPerPct: 0.00144, tangentialPerPct: 0.00274, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.2, tangentialPct: 7.8, volumetricPct: 12.4, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.45, modulusOfRupturePsi: 11300, modulusOfElasticityMillionPsi: 1.63, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 78, confirmed: "text", tier: "reprint" },
  ],
});

/** Western larch. */
export const westernLarch: Wood = /* @__PURE__ */ joinWood({
  id: "western-larch",
  commonName: "western larch",
  botanicalName: { name: "Larix occidentalis", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["larch"],
  printedAs: ["Larch, western","Western larch"],
  rows: [
    { table: oregonWoodPropertiesTable, moisture: "12%", specificGravityRatio: 0.52, tangentialPct: 9.1, modulusOfRupturePsi: 13000, modulusOfElasticityMillionPsi: 1.87, sideHardnessLbf: 830, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table135, radialPerPct: 0.00155, tangentialPerPct: 0.00323, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.5, tangentialPct: 9.1, volumetricPct: 14, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.52, modulusOfRupturePsi: 13000, modulusOfElasticityMillionPsi: 1.87, confirmed: "memory", tier: "memory" },
    { table: woodRuptureTableTable, moisture: "12%", modulusOfRuptureMPa: 90, confirmed: "text", tier: "reprint" },
  ],
});

/** Eastern white pine. */
export const easternWhitePine: Wood = /* @__PURE__ */ joinWood({
  id: "eastern-white-pine",
  commonName: "eastern white pine",
  botanicalName: { name: "Pinus strobus", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["northern white pine","Weymouth pine"],
  printedAs: ["Pine, eastern white"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00071, tangentialPerPct: 0.00212, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 2.1, tangentialPct: 6.1, volumetricPct: 8.2, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.35, modulusOfRupturePsi: 8600, modulusOfElasticityMillionPsi: 1.24, confirmed: "memory", tier: "memory" },
  ],
});

/** Jack pine. */
export const jackPine: Wood = /* @__PURE__ */ joinWood({
  id: "jack-pine",
  commonName: "jack pine",
  botanicalName: { name: "Pinus banksiana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Pine, jack"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00126, tangentialPerPct: 0.0023, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 3.7, tangentialPct: 6.6, volumetricPct: 10.3, confirmed: "memory", tier: "memory" },
  ],
});

/** Jeffrey pine. */
export const jeffreyPine: Wood = /* @__PURE__ */ joinWood({
  id: "jeffrey-pine",
  commonName: "Jeffrey pine",
  botanicalName: { name: "Pinus jeffreyi", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Pine, Jeffrey"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00148, tangentialPerPct: 0.00234, confirmed: "memory", tier: "memory" },
  ],
});

/** Loblolly pine. */
export const loblollyPine: Wood = /* @__PURE__ */ joinWood({
  id: "loblolly-pine",
  commonName: "loblolly pine",
  botanicalName: { name: "Pinus taeda", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["southern yellow pine","southern pine"],
  printedAs: ["Pine, loblolly"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00165, tangentialPerPct: 0.00259, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.8, tangentialPct: 7.4, volumetricPct: 12.3, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.51, modulusOfRupturePsi: 12800, modulusOfElasticityMillionPsi: 1.79, confirmed: "memory", tier: "memory" },
  ],
});

/** Lodgepole pine. */
export const lodgepolePine: Wood = /* @__PURE__ */ joinWood({
  id: "lodgepole-pine",
  commonName: "lodgepole pine",
  botanicalName: { name: "Pinus contorta", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Pine, lodgepole"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00148, tangentialPerPct: 0.00234, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.3, tangentialPct: 6.7, volumetricPct: 11.1, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.41, modulusOfRupturePsi: 9400, modulusOfElasticityMillionPsi: 1.34, confirmed: "memory", tier: "memory" },
  ],
});

/** Longleaf pine. */
export const longleafPine: Wood = /* @__PURE__ */ joinWood({
  id: "longleaf-pine",
  commonName: "longleaf pine",
  botanicalName: { name: "Pinus palustris", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["southern yellow pine","southern pine","heart pine"],
  printedAs: ["Pine, longleaf"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00176, tangentialPerPct: 0.00263, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 5.1, tangentialPct: 7.5, volumetricPct: 12.2, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.59, modulusOfRupturePsi: 14500, modulusOfElasticityMillionPsi: 1.98, confirmed: "memory", tier: "memory" },
  ],
});

/** Pitch pine. */
export const pitchPine: Wood = /* @__PURE__ */ joinWood({
  id: "pitch-pine",
  commonName: "pitch pine",
  botanicalName: { name: "Pinus rigida", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Pine, pitch"],
  rows: [
    { table: woodHandbook2010Table43, radialPct: 4, tangentialPct: 7.1, volumetricPct: 10.9, confirmed: "memory", tier: "memory" },
  ],
});

/** Pond pine. */
export const pondPine: Wood = /* @__PURE__ */ joinWood({
  id: "pond-pine",
  commonName: "pond pine",
  botanicalName: { name: "Pinus serotina", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Pine, pond"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00165, tangentialPerPct: 0.00259, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum5, tangentialPerPct: erratum5 } },
    { table: woodHandbook2010Table43, radialPct: 5.1, tangentialPct: 7.1, volumetricPct: 11.2, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53a, moisture: "green", modulusOfRuptureKPa: 51000, modulusOfElasticityMPa: 8800, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53a, moisture: "12%", modulusOfRuptureKPa: 80000, modulusOfElasticityMPa: 12100, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "green", specificGravityRatio: 0.51, modulusOfRupturePsi: 7400, modulusOfElasticityMillionPsi: 1.28, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.56, modulusOfRupturePsi: 11600, modulusOfElasticityMillionPsi: 1.75, confirmed: "text", tier: "publication" },
  ],
});

/** Ponderosa pine. */
export const ponderosaPine: Wood = /* @__PURE__ */ joinWood({
  id: "ponderosa-pine",
  commonName: "ponderosa pine",
  botanicalName: { name: "Pinus ponderosa", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["western yellow pine"],
  printedAs: ["Pine, ponderosa"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00133, tangentialPerPct: 0.00216, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 3.9, tangentialPct: 6.2, volumetricPct: 9.7, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53a, moisture: "green", modulusOfRuptureKPa: 35000, modulusOfElasticityMPa: 6900, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53a, moisture: "12%", modulusOfRuptureKPa: 65000, modulusOfElasticityMPa: 8900, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "green", specificGravityRatio: 0.38, modulusOfRupturePsi: 5100, modulusOfElasticityMillionPsi: 1, sideHardnessLbf: 320, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.4, modulusOfRupturePsi: 9400, modulusOfElasticityMillionPsi: 1.29, sideHardnessLbf: 460, confirmed: "text", tier: "publication" },
  ],
});

/** Red pine. */
export const redPine: Wood = /* @__PURE__ */ joinWood({
  id: "red-pine",
  commonName: "red pine",
  botanicalName: { name: "Pinus resinosa", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["Norway pine"],
  printedAs: ["Pine, red"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0013, tangentialPerPct: 0.00252, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 3.8, tangentialPct: 7.2, volumetricPct: 11.3, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53a, moisture: "green", modulusOfRuptureKPa: 40000, modulusOfElasticityMPa: 8800, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53a, moisture: "12%", modulusOfRuptureKPa: 76000, modulusOfElasticityMPa: 11200, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "green", specificGravityRatio: 0.41, modulusOfRupturePsi: 5800, modulusOfElasticityMillionPsi: 1.28, sideHardnessLbf: 340, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.46, modulusOfRupturePsi: 11000, modulusOfElasticityMillionPsi: 1.63, sideHardnessLbf: 560, confirmed: "text", tier: "publication" },
  ],
});

/** Sand pine. */
export const sandPine: Wood = /* @__PURE__ */ joinWood({
  id: "sand-pine",
  commonName: "sand pine",
  botanicalName: { name: "Pinus clausa", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Pine, sand"],
  rows: [
    { table: woodHandbook2010Table53a, moisture: "green", modulusOfRuptureKPa: 52000, modulusOfElasticityMPa: 7000, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53a, moisture: "12%", modulusOfRuptureKPa: 80000, modulusOfElasticityMPa: 9700, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "green", specificGravityRatio: 0.46, modulusOfRupturePsi: 7500, modulusOfElasticityMillionPsi: 1.02, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.48, modulusOfRupturePsi: 11600, modulusOfElasticityMillionPsi: 1.41, confirmed: "text", tier: "publication" },
  ],
});

/** Shortleaf pine. */
export const shortleafPine: Wood = /* @__PURE__ */ joinWood({
  id: "shortleaf-pine",
  commonName: "shortleaf pine",
  botanicalName: { name: "Pinus echinata", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["southern yellow pine","southern pine"],
  printedAs: ["Pine, shortleaf"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00158, tangentialPerPct: 0.00271, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.6, tangentialPct: 7.7, volumetricPct: 12.3, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53a, moisture: "green", modulusOfRuptureKPa: 51000, modulusOfElasticityMPa: 9600, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53a, moisture: "12%", modulusOfRuptureKPa: 90000, modulusOfElasticityMPa: 12100, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "green", specificGravityRatio: 0.47, modulusOfRupturePsi: 7400, modulusOfElasticityMillionPsi: 1.39, sideHardnessLbf: 440, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.51, modulusOfRupturePsi: 13100, modulusOfElasticityMillionPsi: 1.75, sideHardnessLbf: 690, confirmed: "text", tier: "publication" },
  ],
});

/** Slash pine. */
export const slashPine: Wood = /* @__PURE__ */ joinWood({
  id: "slash-pine",
  commonName: "slash pine",
  botanicalName: { name: "Pinus elliottii", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["southern yellow pine","southern pine"],
  printedAs: ["Pine, slash"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00187, tangentialPerPct: 0.00267, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 5.4, tangentialPct: 7.6, volumetricPct: 12.1, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53a, moisture: "green", modulusOfRuptureKPa: 60000, modulusOfElasticityMPa: 10500, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53a, moisture: "12%", modulusOfRuptureKPa: 112000, modulusOfElasticityMPa: 13700, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "green", specificGravityRatio: 0.54, modulusOfRupturePsi: 8700, modulusOfElasticityMillionPsi: 1.53, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.59, modulusOfRupturePsi: 16300, modulusOfElasticityMillionPsi: 1.98, confirmed: "text", tier: "publication" },
  ],
});

/** Spruce pine. */
export const sprucePine: Wood = /* @__PURE__ */ joinWood({
  id: "spruce-pine",
  commonName: "spruce pine",
  botanicalName: { name: "Pinus glabra", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Pine, spruce"],
  rows: [
    { table: woodHandbook2010Table53a, moisture: "green", modulusOfRuptureKPa: 41000, modulusOfElasticityMPa: 6900, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53a, moisture: "12%", modulusOfRuptureKPa: 72000, modulusOfElasticityMPa: 8500, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "green", specificGravityRatio: 0.41, modulusOfRupturePsi: 6000, modulusOfElasticityMillionPsi: 1, sideHardnessLbf: 450, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.44, modulusOfRupturePsi: 10400, modulusOfElasticityMillionPsi: 1.23, sideHardnessLbf: 660, confirmed: "text", tier: "publication" },
  ],
});

/** Sugar pine. */
export const sugarPine: Wood = /* @__PURE__ */ joinWood({
  id: "sugar-pine",
  commonName: "sugar pine",
  botanicalName: { name: "Pinus lambertiana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Pine, sugar"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00099, tangentialPerPct: 0.00194, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 2.9, tangentialPct: 5.6, volumetricPct: 7.9, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53a, moisture: "green", modulusOfRuptureKPa: 34000, modulusOfElasticityMPa: 7100, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53a, moisture: "12%", modulusOfRuptureKPa: 57000, modulusOfElasticityMPa: 8200, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "green", specificGravityRatio: 0.34, modulusOfRupturePsi: 4900, modulusOfElasticityMillionPsi: 1.03, sideHardnessLbf: 270, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.36, modulusOfRupturePsi: 8200, modulusOfElasticityMillionPsi: 1.19, sideHardnessLbf: 380, confirmed: "text", tier: "publication" },
  ],
});

/** Virginia pine. */
export const virginiaPine: Wood = /* @__PURE__ */ joinWood({
  id: "virginia-pine",
  commonName: "Virginia pine",
  botanicalName: { name: "Pinus virginiana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["scrub pine"],
  printedAs: ["Pine, Virginia"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00144, tangentialPerPct: 0.00252, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.2, tangentialPct: 7.2, volumetricPct: 11.9, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53a, moisture: "green", modulusOfRuptureKPa: 50000, modulusOfElasticityMPa: 8400, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53a, moisture: "12%", modulusOfRuptureKPa: 90000, modulusOfElasticityMPa: 10500, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "green", specificGravityRatio: 0.45, modulusOfRupturePsi: 7300, modulusOfElasticityMillionPsi: 1.22, sideHardnessLbf: 540, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.48, modulusOfRupturePsi: 13000, modulusOfElasticityMillionPsi: 1.52, sideHardnessLbf: 740, confirmed: "text", tier: "publication" },
  ],
});

/** Western white pine. */
export const westernWhitePine: Wood = /* @__PURE__ */ joinWood({
  id: "western-white-pine",
  commonName: "western white pine",
  botanicalName: { name: "Pinus monticola", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["Idaho white pine"],
  printedAs: ["Pine, western white"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00141, tangentialPerPct: 0.00259, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.1, tangentialPct: 7.4, volumetricPct: 11.8, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53a, moisture: "green", modulusOfRuptureKPa: 32000, modulusOfElasticityMPa: 8200, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53a, moisture: "12%", modulusOfRuptureKPa: 67000, modulusOfElasticityMPa: 10100, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "green", specificGravityRatio: 0.35, modulusOfRupturePsi: 4700, modulusOfElasticityMillionPsi: 1.19, sideHardnessLbf: 260, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.38, modulusOfRupturePsi: 9700, modulusOfElasticityMillionPsi: 1.46, sideHardnessLbf: 420, confirmed: "text", tier: "publication" },
  ],
});

/** Old-growth redwood. */
export const oldGrowthRedwood: Wood = /* @__PURE__ */ joinWood({
  id: "old-growth-redwood",
  commonName: "old-growth redwood",
  botanicalName: { name: "Sequoia sempervirens", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["California redwood","coast redwood"],
  printedAs: ["Redwood, old-growth"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0012, tangentialPerPct: 0.00205, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum7, tangentialPerPct: erratum7 } },
    { table: woodHandbook2010Table43, radialPct: 2.6, tangentialPct: 4.4, volumetricPct: 6.8, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53a, moisture: "green", modulusOfRuptureKPa: 52000, modulusOfElasticityMPa: 8100, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53a, moisture: "12%", modulusOfRuptureKPa: 69000, modulusOfElasticityMPa: 9200, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "green", specificGravityRatio: 0.38, modulusOfRupturePsi: 7500, modulusOfElasticityMillionPsi: 1.18, sideHardnessLbf: 410, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.4, modulusOfRupturePsi: 10000, modulusOfElasticityMillionPsi: 1.34, sideHardnessLbf: 480, confirmed: "text", tier: "publication" },
  ],
});

/** Young-growth redwood. */
export const youngGrowthRedwood: Wood = /* @__PURE__ */ joinWood({
  id: "young-growth-redwood",
  commonName: "young-growth redwood",
  botanicalName: { name: "Sequoia sempervirens", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["California redwood","coast redwood"],
  printedAs: ["Redwood, young-growth","Redwood, second-growth"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00101, tangentialPerPct: 0.00229, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum7, tangentialPerPct: erratum7 } },
    { table: woodHandbook2010Table43, radialPct: 2.2, tangentialPct: 4.9, volumetricPct: 7, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53a, moisture: "green", modulusOfRuptureKPa: 41000, modulusOfElasticityMPa: 6600, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53a, moisture: "12%", modulusOfRuptureKPa: 54000, modulusOfElasticityMPa: 7600, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "green", specificGravityRatio: 0.34, modulusOfRupturePsi: 5900, modulusOfElasticityMillionPsi: 0.96, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.35, modulusOfRupturePsi: 7900, modulusOfElasticityMillionPsi: 1.1, confirmed: "text", tier: "publication" },
  ],
});

/** Black spruce. */
export const blackSpruce: Wood = /* @__PURE__ */ joinWood({
  id: "black-spruce",
  commonName: "black spruce",
  botanicalName: { name: "Picea mariana", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["eastern spruce"],
  printedAs: ["Spruce, black"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00141, tangentialPerPct: 0.00237, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.1, tangentialPct: 6.8, volumetricPct: 11.3, confirmed: "memory", tier: "memory" },
  ],
});

/** Engelmann spruce. */
export const engelmannSpruce: Wood = /* @__PURE__ */ joinWood({
  id: "engelmann-spruce",
  commonName: "Engelmann spruce",
  botanicalName: { name: "Picea engelmannii", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Spruce, Engelmann","Engelmann spruce"],
  rows: [
    { table: oregonWoodPropertiesTable, moisture: "12%", specificGravityRatio: 0.35, tangentialPct: 7.1, modulusOfRupturePsi: 9300, modulusOfElasticityMillionPsi: 1.3, sideHardnessLbf: 390, confirmed: "text", tier: "publication" },
    { table: woodHandbook2010Table135, radialPerPct: 0.0013, tangentialPerPct: 0.00248, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 3.8, tangentialPct: 7.1, volumetricPct: 11, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.35, modulusOfRupturePsi: 9300, modulusOfElasticityMillionPsi: 1.3, confirmed: "memory", tier: "memory" },
  ],
});

/** Red spruce. */
export const redSpruce: Wood = /* @__PURE__ */ joinWood({
  id: "red-spruce",
  commonName: "red spruce",
  botanicalName: { name: "Picea rubens", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["eastern spruce"],
  printedAs: ["Spruce, red"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0013, tangentialPerPct: 0.00274, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 3.8, tangentialPct: 7.8, volumetricPct: 11.8, confirmed: "memory", tier: "memory" },
  ],
});

/** Sitka spruce. */
export const sitkaSpruce: Wood = /* @__PURE__ */ joinWood({
  id: "sitka-spruce",
  commonName: "Sitka spruce",
  botanicalName: { name: "Picea sitchensis", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: [],
  printedAs: ["Spruce, Sitka"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00148, tangentialPerPct: 0.00263, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 4.3, tangentialPct: 7.5, volumetricPct: 11.5, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.4, modulusOfRupturePsi: 10200, modulusOfElasticityMillionPsi: 1.57, confirmed: "memory", tier: "memory" },
  ],
});

/** White spruce. */
export const whiteSpruce: Wood = /* @__PURE__ */ joinWood({
  id: "white-spruce",
  commonName: "white spruce",
  botanicalName: { name: "Picea glauca", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["eastern spruce"],
  printedAs: ["Spruce, white"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0013, tangentialPerPct: 0.00274, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table53b, moisture: "12%", specificGravityRatio: 0.36, modulusOfRupturePsi: 9400, modulusOfElasticityMillionPsi: 1.43, confirmed: "memory", tier: "memory" },
  ],
});

/** Tamarack. */
export const tamarack: Wood = /* @__PURE__ */ joinWood({
  id: "tamarack",
  commonName: "tamarack",
  botanicalName: { name: "Larix laricina", table: speciesList, confirmed: "text", tier: "reprint" },
  group: "softwood",
  origin: "domestic",
  aliases: ["eastern larch","hackmatack","larch"],
  printedAs: ["Tamarack"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00126, tangentialPerPct: 0.00259, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table43, radialPct: 3.7, tangentialPct: 7.4, volumetricPct: 13.6, confirmed: "memory", tier: "memory" },
  ],
});

/** Afrormosia. */
export const afrormosia: Wood = /* @__PURE__ */ joinWood({
  id: "afrormosia",
  commonName: "afrormosia",
  botanicalName: { name: "Pericopsis elata", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: ["kokrodua"],
  printedAs: ["Afrormosia (Pericopsis elata)","Kokrodua"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00148, tangentialPerPct: 0.00297, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 3, tangentialPct: 6.4, volumetricPct: 10.7, confirmed: "text", tier: "publication" },
  ],
});

/** Albarco. */
export const albarco: Wood = /* @__PURE__ */ joinWood({
  id: "albarco",
  commonName: "albarco",
  botanicalName: { name: "Cariniana spp.", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: ["jequitiba"],
  printedAs: ["Albarco (Cariniana spp.)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 2.8, tangentialPct: 5.4, volumetricPct: 9, confirmed: "text", tier: "publication" },
  ],
});

/** Andiroba. */
export const andiroba: Wood = /* @__PURE__ */ joinWood({
  id: "andiroba",
  commonName: "andiroba",
  botanicalName: { name: "Carapa guianensis", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: ["crabwood"],
  printedAs: ["Andiroba (Carapa guianensis)","Andiroba, crabwood"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00137, tangentialPerPct: 0.00274, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 3.1, tangentialPct: 7.6, volumetricPct: 10.4, confirmed: "text", tier: "publication" },
  ],
});

/** Angelin. */
export const angelin: Wood = /* @__PURE__ */ joinWood({
  id: "angelin",
  commonName: "angelin",
  botanicalName: { name: "Andira inermis", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Angelin (Andira inermis)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 4.6, tangentialPct: 9.8, volumetricPct: 12.5, confirmed: "text", tier: "publication" },
  ],
});

/** Angelique. */
export const angelique: Wood = /* @__PURE__ */ joinWood({
  id: "angelique",
  commonName: "angelique",
  botanicalName: { name: "Dicorynia guianensis", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: ["basralocus"],
  printedAs: ["Angelique (Dicorynia guianensis)","Angelique"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0018, tangentialPerPct: 0.00312, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table44, radialPct: 5.2, tangentialPct: 8.8, volumetricPct: 14, confirmed: "text", tier: "publication" },
  ],
});

/** Apitong. */
export const apitong: Wood = /* @__PURE__ */ joinWood({
  id: "apitong",
  commonName: "apitong",
  botanicalName: { name: "Dipterocarpus spp.", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: ["keruing"],
  printedAs: ["Apitong (Dipterocarpus spp.)","Apitong, keruing"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00243, tangentialPerPct: 0.00527, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 5.2, tangentialPct: 10.9, volumetricPct: 16.1, confirmed: "text", tier: "publication" },
  ],
});

/** Avodire. */
export const avodire: Wood = /* @__PURE__ */ joinWood({
  id: "avodire",
  commonName: "avodire",
  botanicalName: { name: "Turreanthus africanus", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Avodire (Turreanthus africanus)","Avodire"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00126, tangentialPerPct: 0.00226, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 4.6, tangentialPct: 6.7, volumetricPct: 12, confirmed: "text", tier: "publication" },
  ],
});

/** Azobe. */
export const azobe: Wood = /* @__PURE__ */ joinWood({
  id: "azobe",
  commonName: "azobe",
  botanicalName: { name: "Lophira alata", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: ["ekki","bongossi"],
  printedAs: ["Azobe (Lophira alata)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 8.4, tangentialPct: 11, volumetricPct: 17, confirmed: "text", tier: "publication" },
  ],
});

/** Balata. */
export const balata: Wood = /* @__PURE__ */ joinWood({
  id: "balata",
  commonName: "balata",
  botanicalName: { name: "Manilkara bidentata", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: ["bulletwood"],
  printedAs: ["Balata (Manilkara bidentata)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 6.3, tangentialPct: 9.4, volumetricPct: 16.9, confirmed: "text", tier: "publication" },
  ],
});

/** Balsa. */
export const balsa: Wood = /* @__PURE__ */ joinWood({
  id: "balsa",
  commonName: "balsa",
  botanicalName: { name: "Ochroma pyramidale", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Balsa (Ochroma pyramidale)","Balsa"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00102, tangentialPerPct: 0.00267, confirmed: "memory", tier: "memory" },
    { table: woodHandbook2010Table44, radialPct: 3, tangentialPct: 7.6, volumetricPct: 10.8, confirmed: "memory", tier: "memory" },
  ],
});

/** Banak. */
export const banak: Wood = /* @__PURE__ */ joinWood({
  id: "banak",
  commonName: "banak",
  botanicalName: { name: "Virola spp.", table: woodDescriptions, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["virola"],
  printedAs: ["Banak"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00158, tangentialPerPct: 0.00312, confirmed: "memory", tier: "memory" },
  ],
});

/** Cativo. */
export const cativo: Wood = /* @__PURE__ */ joinWood({
  id: "cativo",
  commonName: "cativo",
  botanicalName: { name: "Prioria copaifera", table: woodDescriptions, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Cativo"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00078, tangentialPerPct: 0.00183, confirmed: "memory", tier: "memory" },
  ],
});

/** Cuangare. */
export const cuangare: Wood = /* @__PURE__ */ joinWood({
  id: "cuangare",
  commonName: "cuangare",
  botanicalName: null,
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Cuangare"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00183, tangentialPerPct: 0.00342, confirmed: "memory", tier: "memory" },
  ],
});

/** Greenheart. */
export const greenheart: Wood = /* @__PURE__ */ joinWood({
  id: "greenheart",
  commonName: "greenheart",
  botanicalName: { name: "Ocotea rodiaei", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Greenheart (Ocotea rodiaei)","Greenheart"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.0039, tangentialPerPct: 0.0043, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 8.8, tangentialPct: 9.6, volumetricPct: 17.1, confirmed: "memory", tier: "memory" },
  ],
});

/** Ipe. */
export const ipe: Wood = /* @__PURE__ */ joinWood({
  id: "ipe",
  commonName: "ipe",
  botanicalName: { name: "Tabebuia spp.", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["lapacho"],
  printedAs: ["Ipe (Tabebuia spp.)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 6.6, tangentialPct: 8, volumetricPct: 13.2, confirmed: "memory", tier: "memory" },
  ],
});

/** Iroko. */
export const iroko: Wood = /* @__PURE__ */ joinWood({
  id: "iroko",
  commonName: "iroko",
  botanicalName: { name: "Chlorophora excelsa and C. regia", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["kambala"],
  printedAs: ["Iroko (Chlorophora excelsa and C. regia)","Iroko"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00153, tangentialPerPct: 0.00205, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 2.8, tangentialPct: 3.8, volumetricPct: 8.8, confirmed: "memory", tier: "memory" },
  ],
});

/** Jarrah. */
export const jarrah: Wood = /* @__PURE__ */ joinWood({
  id: "jarrah",
  commonName: "jarrah",
  botanicalName: { name: "Eucalyptus marginata", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Jarrah (Eucalyptus marginata)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 7.7, tangentialPct: 11, volumetricPct: 18.7, confirmed: "memory", tier: "memory" },
  ],
});

/** Dark red lauan. */
export const darkRedLauan: Wood = /* @__PURE__ */ joinWood({
  id: "dark-red-lauan",
  commonName: "dark red lauan",
  botanicalName: { name: "Shorea spp.", table: woodDescriptions, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["Philippine mahogany","luan"],
  printedAs: ["Lauans: dark red"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00133, tangentialPerPct: 0.00267, confirmed: "memory", tier: "memory" },
  ],
});

/** Light red lauan. */
export const lightRedLauan: Wood = /* @__PURE__ */ joinWood({
  id: "light-red-lauan",
  commonName: "light red lauan",
  botanicalName: { name: "Shorea spp.", table: woodDescriptions, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["Philippine mahogany","luan"],
  printedAs: ["Lauans: light red"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00126, tangentialPerPct: 0.00241, confirmed: "memory", tier: "memory" },
  ],
});

/** White lauan. */
export const whiteLauan: Wood = /* @__PURE__ */ joinWood({
  id: "white-lauan",
  commonName: "white lauan",
  botanicalName: { name: "Pentacme contorta", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: ["Philippine mahogany","luan"],
  printedAs: ["Lauan, white (Pentacme contorta)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 4, tangentialPct: 7.7, volumetricPct: 11.7, confirmed: "text", tier: "publication" },
  ],
});

/** Limba. */
export const limba: Wood = /* @__PURE__ */ joinWood({
  id: "limba",
  commonName: "limba",
  botanicalName: { name: "Terminalia superba", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: ["afara"],
  printedAs: ["Limba (Terminalia superba)","Limba"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00151, tangentialPerPct: 0.00187, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 4.5, tangentialPct: 6.2, volumetricPct: 10.8, confirmed: "text", tier: "publication" },
  ],
});

/** Macawood. */
export const macawood: Wood = /* @__PURE__ */ joinWood({
  id: "macawood",
  commonName: "macawood",
  botanicalName: { name: "Platymiscium spp.", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: ["macacauba"],
  printedAs: ["Macawood (Platymiscium spp.)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 2.7, tangentialPct: 3.5, volumetricPct: 6.5, confirmed: "text", tier: "publication" },
  ],
});

/** African mahogany. */
export const africanMahogany: Wood = /* @__PURE__ */ joinWood({
  id: "african-mahogany",
  commonName: "African mahogany",
  botanicalName: { name: "Khaya spp.", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Mahogany, African (Khaya spp.)","Khaya"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00141, tangentialPerPct: 0.00201, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 2.5, tangentialPct: 4.5, volumetricPct: 8.8, confirmed: "text", tier: "publication" },
  ],
});

/** True mahogany. */
export const trueMahogany: Wood = /* @__PURE__ */ joinWood({
  id: "true-mahogany",
  commonName: "true mahogany",
  botanicalName: { name: "Swietenia macrophylla", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: ["Honduras mahogany","American mahogany","genuine mahogany","Honduran mahogany"],
  printedAs: ["Mahogany, true (Swietenia macrophylla)","Mahogany"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00172, tangentialPerPct: 0.00238, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 3, tangentialPct: 4.1, volumetricPct: 7.8, confirmed: "text", tier: "publication" },
  ],
});

/** Manbarklak. */
export const manbarklak: Wood = /* @__PURE__ */ joinWood({
  id: "manbarklak",
  commonName: "manbarklak",
  botanicalName: { name: "Eschweilera spp.", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Manbarklak (Eschweilera spp.)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 5.8, tangentialPct: 10.3, volumetricPct: 15.9, confirmed: "text", tier: "publication" },
  ],
});

/** Manni. */
export const manni: Wood = /* @__PURE__ */ joinWood({
  id: "manni",
  commonName: "manni",
  botanicalName: { name: "Symphonia globulifera", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Manni (Symphonia globulifera)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 5.7, tangentialPct: 9.7, volumetricPct: 15.6, confirmed: "text", tier: "publication" },
  ],
});

/** Marishballi. */
export const marishballi: Wood = /* @__PURE__ */ joinWood({
  id: "marishballi",
  commonName: "marishballi",
  botanicalName: { name: "Licania spp.", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Marishballi (Licania spp.)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 7.5, tangentialPct: 11.7, volumetricPct: 17.2, confirmed: "text", tier: "publication" },
  ],
});

/** Meranti. */
export const meranti: Wood = /* @__PURE__ */ joinWood({
  id: "meranti",
  commonName: "meranti",
  botanicalName: { name: "Shorea spp.", table: woodDescriptions, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Meranti"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00126, tangentialPerPct: 0.00289, confirmed: "memory", tier: "memory" },
  ],
});

/** White meranti. */
export const whiteMeranti: Wood = /* @__PURE__ */ joinWood({
  id: "white-meranti",
  commonName: "white meranti",
  botanicalName: { name: "Shorea spp.", table: woodHandbook2010Table44, confirmed: "text", tier: "publication" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Meranti, white (Shorea spp.)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 3, tangentialPct: 6.6, volumetricPct: 7.7, confirmed: "text", tier: "publication" },
  ],
});

/** Obeche. */
export const obeche: Wood = /* @__PURE__ */ joinWood({
  id: "obeche",
  commonName: "obeche",
  botanicalName: { name: "Triplochiton scleroxylon", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["wawa","ayous","samba"],
  printedAs: ["Obeche (Triplochiton scleroxylon)","Obeche"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00106, tangentialPerPct: 0.00183, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 3, tangentialPct: 5.4, volumetricPct: 9.2, confirmed: "memory", tier: "memory" },
  ],
});

/** Okoume. */
export const okoume: Wood = /* @__PURE__ */ joinWood({
  id: "okoume",
  commonName: "okoume",
  botanicalName: { name: "Aucoumea klaineana", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["gaboon"],
  printedAs: ["Okoume (Aucoumea klaineana)","Okoume"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00194, tangentialPerPct: 0.00212, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 4.1, tangentialPct: 6.1, volumetricPct: 11.3, confirmed: "memory", tier: "memory" },
  ],
});

/** African padauk. */
export const africanPadauk: Wood = /* @__PURE__ */ joinWood({
  id: "african-padauk",
  commonName: "African padauk",
  botanicalName: { name: "Pterocarpus soyauxii", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["padouk"],
  printedAs: ["Padauk, African (Pterocarpus soyauxii)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 3.3, tangentialPct: 5.2, volumetricPct: 7.6, confirmed: "memory", tier: "memory" },
  ],
});

/** Parana pine. */
export const paranaPine: Wood = /* @__PURE__ */ joinWood({
  id: "parana-pine",
  commonName: "Parana pine",
  botanicalName: { name: "Araucaria angustifolia", table: woodDescriptions, confirmed: "memory", tier: "memory" },
  group: "softwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Parana pine"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00137, tangentialPerPct: 0.00278, confirmed: "memory", tier: "memory" },
  ],
});

/** Paumarfim. */
export const paumarfim: Wood = /* @__PURE__ */ joinWood({
  id: "paumarfim",
  commonName: "paumarfim",
  botanicalName: { name: "Balfourodendron riedelianum", table: woodDescriptions, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["pau marfim"],
  printedAs: ["Paumarfim"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00158, tangentialPerPct: 0.00312, confirmed: "memory", tier: "memory" },
  ],
});

/** Primavera. */
export const primavera: Wood = /* @__PURE__ */ joinWood({
  id: "primavera",
  commonName: "primavera",
  botanicalName: null,
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Primavera"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00106, tangentialPerPct: 0.0018, confirmed: "memory", tier: "memory" },
  ],
});

/** Purpleheart. */
export const purpleheart: Wood = /* @__PURE__ */ joinWood({
  id: "purpleheart",
  commonName: "purpleheart",
  botanicalName: { name: "Peltogyne spp.", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["purple heart","amaranth"],
  printedAs: ["Purpleheart (Peltogyne spp.)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 3.2, tangentialPct: 6.1, volumetricPct: 9.9, confirmed: "memory", tier: "memory" },
  ],
});

/** Ramin. */
export const ramin: Wood = /* @__PURE__ */ joinWood({
  id: "ramin",
  commonName: "ramin",
  botanicalName: { name: "Gonystylus spp.", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Ramin (Gonystylus spp.)","Ramin"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00133, tangentialPerPct: 0.00308, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 4.3, tangentialPct: 8.7, volumetricPct: 13.4, confirmed: "memory", tier: "memory" },
  ],
});

/** Brazilian rosewood. */
export const brazilianRosewood: Wood = /* @__PURE__ */ joinWood({
  id: "brazilian-rosewood",
  commonName: "Brazilian rosewood",
  botanicalName: { name: "Dalbergia nigra", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["jacaranda","Rio rosewood"],
  printedAs: ["Rosewood, Brazilian (Dalbergia nigra)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 2.9, tangentialPct: 4.6, volumetricPct: 8.5, confirmed: "memory", tier: "memory" },
  ],
});

/** Indian rosewood. */
export const indianRosewood: Wood = /* @__PURE__ */ joinWood({
  id: "indian-rosewood",
  commonName: "Indian rosewood",
  botanicalName: { name: "Dalbergia latifolia", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["East Indian rosewood"],
  printedAs: ["Rosewood, Indian (Dalbergia latifolia)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 2.7, tangentialPct: 5.8, volumetricPct: 8.5, confirmed: "memory", tier: "memory" },
  ],
});

/** Santa Maria. */
export const santaMaria: Wood = /* @__PURE__ */ joinWood({
  id: "santa-maria",
  commonName: "Santa Maria",
  botanicalName: { name: "Calophyllum brasiliense", table: woodDescriptions, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Santa Maria"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00187, tangentialPerPct: 0.00278, confirmed: "memory", tier: "memory" },
  ],
});

/** Sapele. */
export const sapele: Wood = /* @__PURE__ */ joinWood({
  id: "sapele",
  commonName: "sapele",
  botanicalName: { name: "Entandrophragma cylindricum", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["sapelli"],
  printedAs: ["Sapele (Entandrophragma cylindricum)"],
  rows: [
    { table: woodHandbook2010Table44, radialPct: 4.6, tangentialPct: 7.4, volumetricPct: 14, confirmed: "memory", tier: "memory" },
  ],
});

/** Spanish-cedar. */
export const spanishCedar: Wood = /* @__PURE__ */ joinWood({
  id: "spanish-cedar",
  commonName: "Spanish-cedar",
  botanicalName: { name: "Cedrela spp.", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: ["cedro"],
  printedAs: ["Spanish-cedar (Cedrela spp.)","Spanish-cedar"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00141, tangentialPerPct: 0.00219, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 4.2, tangentialPct: 6.3, volumetricPct: 10.3, confirmed: "memory", tier: "memory" },
  ],
});

/** Teak. */
export const teak: Wood = /* @__PURE__ */ joinWood({
  id: "teak",
  commonName: "teak",
  botanicalName: { name: "Tectona grandis", table: woodHandbook2010Table44, confirmed: "memory", tier: "memory" },
  group: "hardwood",
  origin: "imported",
  aliases: [],
  printedAs: ["Teak (Tectona grandis)","Teak"],
  rows: [
    { table: woodHandbook2010Table135, radialPerPct: 0.00101, tangentialPerPct: 0.00186, confirmed: "memory", tier: "memory", errata: { radialPerPct: erratum8, tangentialPerPct: erratum8 } },
    { table: woodHandbook2010Table44, radialPct: 2.5, tangentialPct: 5.8, volumetricPct: 7, confirmed: "memory", tier: "memory" },
  ],
});

/** Every wood, in the order of `data/woods.csv`. */
export const woods: readonly Wood[] = [
  redAlder,
  apple,
  blackAsh,
  blueAsh,
  greenAsh,
  oregonAsh,
  pumpkinAsh,
  whiteAsh,
  bigtoothAspen,
  quakingAspen,
  americanBasswood,
  americanBeech,
  alaskaPaperBirch,
  grayBirch,
  paperBirch,
  riverBirch,
  sweetBirch,
  yellowBirch,
  yellowBuckeye,
  butternut,
  northernCatalpa,
  blackCherry,
  americanChestnut,
  balsamPoplar,
  blackCottonwood,
  easternCottonwood,
  americanElm,
  cedarElm,
  rockElm,
  slipperyElm,
  wingedElm,
  hackberry,
  trueHickory,
  mockernutHickory,
  pecan,
  pignutHickory,
  shagbarkHickory,
  shellbarkHickory,
  americanHolly,
  honeylocust,
  blackLocust,
  pacificMadrone,
  cucumbertree,
  southernMagnolia,
  sweetbay,
  bigleafMaple,
  blackMaple,
  redMaple,
  silverMaple,
  stripedMaple,
  sugarMaple,
  commercialRedOak,
  commercialWhiteOak,
  blackOak,
  burOak,
  californiaBlackOak,
  chestnutOak,
  laurelOak,
  liveOak,
  northernRedOak,
  oregonWhiteOak,
  overcupOak,
  pinOak,
  postOak,
  scarletOak,
  southernRedOak,
  swampChestnutOak,
  waterOak,
  whiteOak,
  willowOak,
  commonPersimmon,
  sassafras,
  sweetgum,
  americanSycamore,
  tanoak,
  blackTupelo,
  waterTupelo,
  blackWalnut,
  blackWillow,
  pacificWillow,
  yellowPoplar,
  baldcypress,
  atlanticWhiteCedar,
  easternRedcedar,
  incenseCedar,
  northernWhiteCedar,
  portOrfordCedar,
  westernRedcedar,
  yellowCedar,
  coastDouglasFir,
  interiorNorthDouglasFir,
  interiorWestDouglasFir,
  balsamFir,
  californiaRedFir,
  grandFir,
  nobleFir,
  pacificSilverFir,
  subalpineFir,
  whiteFir,
  easternHemlock,
  mountainHemlock,
  westernHemlock,
  westernLarch,
  easternWhitePine,
  jackPine,
  jeffreyPine,
  loblollyPine,
  lodgepolePine,
  longleafPine,
  pitchPine,
  pondPine,
  ponderosaPine,
  redPine,
  sandPine,
  shortleafPine,
  slashPine,
  sprucePine,
  sugarPine,
  virginiaPine,
  westernWhitePine,
  oldGrowthRedwood,
  youngGrowthRedwood,
  blackSpruce,
  engelmannSpruce,
  redSpruce,
  sitkaSpruce,
  whiteSpruce,
  tamarack,
  afrormosia,
  albarco,
  andiroba,
  angelin,
  angelique,
  apitong,
  avodire,
  azobe,
  balata,
  balsa,
  banak,
  cativo,
  cuangare,
  greenheart,
  ipe,
  iroko,
  jarrah,
  darkRedLauan,
  lightRedLauan,
  whiteLauan,
  limba,
  macawood,
  africanMahogany,
  trueMahogany,
  manbarklak,
  manni,
  marishballi,
  meranti,
  whiteMeranti,
  obeche,
  okoume,
  africanPadauk,
  paranaPine,
  paumarfim,
  primavera,
  purpleheart,
  ramin,
  brazilianRosewood,
  indianRosewood,
  santaMaria,
  sapele,
  spanishCedar,
  teak,
];
