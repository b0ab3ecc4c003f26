/** Names of the type that is read, the first one found: the same bookish ones as in sheets and pictures. */
export const SERIF =
  'Charter, "Bitstream Charter", "Iowan Old Style", Georgia, "Noto Serif", "Liberation Serif", serif';

/** Names of the type for what is pressed or only glanced at: buttons, minutes, names. */
export const SANS = 'Helvetica, Arial, "Liberation Sans", sans-serif';
