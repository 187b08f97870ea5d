import 'virtual:themes.css';
import './phone.css';
import '../theme/night.css';
import '../theme/forced-colours.css';
import { startPhone } from './phone-app.ts';

const root = document.getElementById('app');
if (root === null) throw new Error('The page has no place for the app.');
startPhone(root);
