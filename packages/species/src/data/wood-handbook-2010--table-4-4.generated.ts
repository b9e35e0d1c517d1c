// Written by `npm run tables` from data/tables/wood-handbook-2010--table-4-4.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { woodHandbook2010 } from '@scantling/rules/sources';
import type { ImportedShrinkageRow } from '../rows.ts';

/** Shrinkage of some woods imported into the United States, % of the green dimension, from green to ovendry: Table 4-4, p. 4-8 of wood-handbook-2010. */
export const woodHandbook2010Table44: readonly ImportedShrinkageRow[] = [
  { species: "Afrormosia (Pericopsis elata)", radialPct: 3, tangentialPct: 6.4, volumetricPct: 10.7, location: "AF", confirmed: "text", tier: "publication" },
  { species: "Albarco (Cariniana spp.)", radialPct: 2.8, tangentialPct: 5.4, volumetricPct: 9, location: "AM", confirmed: "text", tier: "publication" },
  { species: "Andiroba (Carapa guianensis)", radialPct: 3.1, tangentialPct: 7.6, volumetricPct: 10.4, location: "AM", confirmed: "text", tier: "publication" },
  { species: "Angelin (Andira inermis)", radialPct: 4.6, tangentialPct: 9.8, volumetricPct: 12.5, location: "AM", confirmed: "text", tier: "publication" },
  { species: "Angelique (Dicorynia guianensis)", radialPct: 5.2, tangentialPct: 8.8, volumetricPct: 14, location: "AM", confirmed: "text", tier: "publication" },
  { species: "Apitong (Dipterocarpus spp.)", radialPct: 5.2, tangentialPct: 10.9, volumetricPct: 16.1, location: "AS", confirmed: "text", tier: "publication" },
  { species: "Avodire (Turreanthus africanus)", radialPct: 4.6, tangentialPct: 6.7, volumetricPct: 12, location: "AF", confirmed: "text", tier: "publication" },
  { species: "Azobe (Lophira alata)", radialPct: 8.4, tangentialPct: 11, volumetricPct: 17, location: "AM", confirmed: "text", tier: "publication" },
  { species: "Balata (Manilkara bidentata)", radialPct: 6.3, tangentialPct: 9.4, volumetricPct: 16.9, location: "AM", confirmed: "text", tier: "publication" },
  { species: "Balsa (Ochroma pyramidale)", radialPct: 3, tangentialPct: 7.6, volumetricPct: 10.8, location: "AM", confirmed: "memory", tier: "memory" },
  { species: "Greenheart (Ocotea rodiaei)", radialPct: 8.8, tangentialPct: 9.6, volumetricPct: 17.1, location: "AM", confirmed: "memory", tier: "memory" },
  { species: "Ipe (Tabebuia spp.)", radialPct: 6.6, tangentialPct: 8, volumetricPct: 13.2, location: "AM", confirmed: "memory", tier: "memory" },
  { species: "Iroko (Chlorophora excelsa and C. regia)", radialPct: 2.8, tangentialPct: 3.8, volumetricPct: 8.8, location: "AF", confirmed: "memory", tier: "memory" },
  { species: "Jarrah (Eucalyptus marginata)", radialPct: 7.7, tangentialPct: 11, volumetricPct: 18.7, location: "AS", confirmed: "memory", tier: "memory" },
  { species: "Lauan, white (Pentacme contorta)", radialPct: 4, tangentialPct: 7.7, volumetricPct: 11.7, location: "AS", confirmed: "text", tier: "publication" },
  { species: "Limba (Terminalia superba)", radialPct: 4.5, tangentialPct: 6.2, volumetricPct: 10.8, location: "AF", confirmed: "text", tier: "publication" },
  { species: "Macawood (Platymiscium spp.)", radialPct: 2.7, tangentialPct: 3.5, volumetricPct: 6.5, location: "AM", confirmed: "text", tier: "publication" },
  { species: "Mahogany, African (Khaya spp.)", radialPct: 2.5, tangentialPct: 4.5, volumetricPct: 8.8, location: "AF", confirmed: "text", tier: "publication" },
  { species: "Mahogany, true (Swietenia macrophylla)", radialPct: 3, tangentialPct: 4.1, volumetricPct: 7.8, location: "AM", confirmed: "text", tier: "publication" },
  { species: "Manbarklak (Eschweilera spp.)", radialPct: 5.8, tangentialPct: 10.3, volumetricPct: 15.9, location: "AM", confirmed: "text", tier: "publication" },
  { species: "Manni (Symphonia globulifera)", radialPct: 5.7, tangentialPct: 9.7, volumetricPct: 15.6, location: "AM", confirmed: "text", tier: "publication" },
  { species: "Marishballi (Licania spp.)", radialPct: 7.5, tangentialPct: 11.7, volumetricPct: 17.2, location: "AM", confirmed: "text", tier: "publication" },
  { species: "Meranti, white (Shorea spp.)", radialPct: 3, tangentialPct: 6.6, volumetricPct: 7.7, location: "AS", confirmed: "text", tier: "publication" },
  { species: "Obeche (Triplochiton scleroxylon)", radialPct: 3, tangentialPct: 5.4, volumetricPct: 9.2, location: "AF", confirmed: "memory", tier: "memory" },
  { species: "Okoume (Aucoumea klaineana)", radialPct: 4.1, tangentialPct: 6.1, volumetricPct: 11.3, location: "AF", confirmed: "memory", tier: "memory" },
  { species: "Padauk, African (Pterocarpus soyauxii)", radialPct: 3.3, tangentialPct: 5.2, volumetricPct: 7.6, location: "AF", confirmed: "memory", tier: "memory" },
  { species: "Purpleheart (Peltogyne spp.)", radialPct: 3.2, tangentialPct: 6.1, volumetricPct: 9.9, location: "AM", confirmed: "memory", tier: "memory" },
  { species: "Ramin (Gonystylus spp.)", radialPct: 4.3, tangentialPct: 8.7, volumetricPct: 13.4, location: "AS", confirmed: "memory", tier: "memory" },
  { species: "Rosewood, Brazilian (Dalbergia nigra)", radialPct: 2.9, tangentialPct: 4.6, volumetricPct: 8.5, location: "AM", confirmed: "memory", tier: "memory" },
  { species: "Rosewood, Indian (Dalbergia latifolia)", radialPct: 2.7, tangentialPct: 5.8, volumetricPct: 8.5, location: "AS", confirmed: "memory", tier: "memory" },
  { species: "Sapele (Entandrophragma cylindricum)", radialPct: 4.6, tangentialPct: 7.4, volumetricPct: 14, location: "AF", confirmed: "memory", tier: "memory" },
  { species: "Spanish-cedar (Cedrela spp.)", radialPct: 4.2, tangentialPct: 6.3, volumetricPct: 10.3, location: "AM", confirmed: "memory", tier: "memory" },
  { species: "Teak (Tectona grandis)", radialPct: 2.5, tangentialPct: 5.8, volumetricPct: 7, location: "AS", confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const woodHandbook2010Table44Provenance: TableProvenance = {
  source: woodHandbook2010,
  at: "Table 4-4, p. 4-8",
  title: "Shrinkage of some woods imported into the United States, % of the green dimension, from green to ovendry",
  rights: "A work of the United States government, in the public domain in the United States.",
  errata: [{"rows":["Azobe (Lophira alata)"],"columns":["location"],"says":"The page prints the location AM (tropical America); the tree grows in West Africa."}],
  notes: ["Location: AF Africa, AM tropical America, AS Asia and Oceania.","In the text that was seen, the right column of the page (white lauan to white meranti) has names and figures on different lines; they are paired by their order.","The lower part of the page could not be seen: those rows are from memory."],
};
