// Keeps the site on this device, so that it works in a shop without a network.
if ('serviceWorker' in navigator) {
  // After the page has loaded: what it shows comes first.
  addEventListener('load', () => navigator.serviceWorker.register('/offline.js'));
}
