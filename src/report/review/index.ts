// The other side of a report: what a specialist sees of it and says of it.
export {
  claimOf,
  type Dossier,
  dossierOf,
  type Entered,
  type Fit,
  LACKING,
  lackingIn,
  reviewedFind,
  taxonIn,
  type Weighed,
} from './review.ts';
