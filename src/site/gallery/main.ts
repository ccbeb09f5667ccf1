// The page of all pictures: it registers what it shows, and asks for nothing that it does not.
import '../../define.ts';
import '../../elements/comparison/define.ts';
import '../../elements/portrait/define.ts';
import { StewardsGallery } from './gallery.ts';

customElements.define('stewards-gallery', StewardsGallery);
